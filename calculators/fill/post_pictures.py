"""A post on its plate as a butt and as a plug, cut through: where the heat went, and the push each takes."""

from __future__ import annotations

from dataclasses import dataclass

from ..drawing import Drawing
from ..units import number_text, with_unit
from .common import mm
from .section_pictures import WIDE, bar


@dataclass(frozen=True)
class Posts:
    """Sizes in mm: post diameter and length, plate thickness, depth of the plug, of the rim (0: fused through)."""

    post: float
    length: float
    plate: float
    plug: float
    rim: float


def butt_and_plug(posts: Posts, butt_push: float, plug_push: float) -> Drawing:
    """Left a butt, right a plug: hatched plate, fused metal, softened metal, and the push at the post's end."""
    scale = min(90 / posts.post, 110 / posts.plate)
    px = 1 / scale
    tall = min(posts.length, 200 * px)
    told = (
        f"A post {posts.post:.2f} mm thick and {posts.length:.1f} mm long on a plate, as a butt that bends at "
        f"{butt_push:.2f} N, and as a plug fused {posts.plug:.2f} mm deep that bends at {plug_push:.2f} N."
    )
    height = (tall + posts.plate) * scale + 118
    picture = Drawing(WIDE * px, height * px, "Butt and plug under a push from the side, to scale", told, scale)
    top = 40 * px
    face = top + tall
    broken = tall < posts.length
    for cx, name, push in ((160 * px, "butt", butt_push), (440 * px, "plug", plug_push)):
        if name == "butt":
            _butt(picture, cx, top, face, posts, broken)
        else:
            _plug(picture, cx, top, face, posts, broken)
        _push(picture, cx - posts.post / 2, top + 12 * px, with_unit(number_text(push, 2), "N"))
        picture.text(cx, face + posts.plate + 52 * px, name)
    side = 160 * px + posts.post / 2
    picture.dimension((side, top), (side, face), mm(posts.length), away=26)
    length, words = bar(scale)
    picture.scale_bar(length, words, 300 * px - length / 2, face + posts.plate + 20 * px)
    return picture


def _plate(picture: Drawing, cx: float, face: float, plate: float, hole: float = 0.0) -> None:
    half = 95 / picture.scale
    if hole:
        for way in (-1, 1):
            near, far = cx + way * hole / 2, cx + way * half
            picture.polygon([(near, face), (far, face), (far, face + plate), (near, face + plate)], "cut")
    else:
        picture.rectangle(cx - half, face, 2 * half, plate, "cut")


def _shaft(picture: Drawing, cx: float, top: float, low: float, post: float, gap: float | None) -> None:
    """The post from the side; ``gap`` is where it is broken because it is longer than the picture."""
    if gap is None:
        picture.rectangle(cx - post / 2, top, post, low - top, "part")
        return
    tooth, space = 5 / picture.scale, 7 / picture.scale
    for start, end, jagged in ((top, gap - space, "low"), (gap + space, low, "high")):
        xs = [cx - post / 2 + post * i / 6 for i in range(7)]
        edge = end if jagged == "low" else start
        jag = [(x, edge + (tooth if i % 2 else -tooth)) for i, x in enumerate(xs)]
        straight = start if jagged == "low" else end
        picture.polygon([(cx - post / 2, straight), *jag, (cx + post / 2, straight)], "part")


def _butt(picture: Drawing, cx: float, top: float, face: float, posts: Posts, broken: bool) -> None:
    _plate(picture, cx, face, posts.plate)
    half = posts.post / 2
    _shaft(picture, cx, top, face, posts.post, (top + face) / 2 - 10 / picture.scale if broken else None)
    soft = min(0.7 * posts.post, 0.35 * (face - top))
    picture.rectangle(cx - half, face - soft, posts.post, soft, "soft")
    thin = 0.16 * posts.post
    if posts.rim:
        for way in (-1, 1):
            near, far = cx + way * (half - posts.rim), cx + way * (half + thin)
            picture.polygon(
                [(near, face - thin), (cx + way * half, face - thin), (far, face), (near, face + thin)], "hot"
            )
        return
    picture.polygon(
        [
            (cx - half, face - thin),
            (cx + half, face - thin),
            (cx + half + thin, face),
            (cx + 0.6 * half, face + thin),
            (cx - 0.6 * half, face + thin),
            (cx - half - thin, face),
        ],
        "hot",
    )


def _plug(picture: Drawing, cx: float, top: float, face: float, posts: Posts, broken: bool) -> None:
    back = face + posts.plate
    half, wide = posts.post / 2, 0.16 * posts.post
    depth = min(posts.plug, posts.plate)
    _plate(picture, cx, face, posts.plate, posts.post)
    _shaft(picture, cx, top, back, posts.post, (top + face) / 2 - 10 / picture.scale if broken else None)
    picture.rectangle(cx - half, back - depth, posts.post, depth, "soft")
    crown = 0.15 * posts.post
    for way in (-1, 1):
        picture.polygon(
            [(cx + way * half * 0.9, back - depth), (cx + way * half, back - depth), (cx + way * (half + wide), back),
             (cx + way * half * 0.7, back)],
            "hot",
        )  # fmt: skip
    picture.polygon([(cx - half - wide, back), (cx + half + wide, back), (cx + half * 0.6, back + crown),
                     (cx - half * 0.6, back + crown)], "hot")  # fmt: skip
    edge = cx + 95 / picture.scale
    picture.dimension((edge, back - depth), (edge, back), mm(depth, 2), away=14)


def _push(picture: Drawing, x: float, y: float, words: str) -> None:
    """An arrow from the left that ends on the post, with the push beside its tail."""
    px = 1 / picture.scale
    picture.line([(x - 60 * px, y), (x - 3 * px, y)], "ink")
    picture.line([(x - 14 * px, y - 6 * px), (x - 3 * px, y), (x - 14 * px, y + 6 * px)], "ink")
    picture.text(x - 30 * px, y - 12 * px, words)
