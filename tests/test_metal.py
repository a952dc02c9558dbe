"""What must hold for every weight of stock, alloy, density, link and settlement: integration, balances, limits."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy import integrate  # type: ignore[import-untyped]

from calculators.declare import all_calculators
from calculators.fields import Fineness, Price
from calculators.metals import metals
from calculators.profiles import outline
from calculators.run import answer
from calculators.units import magnitude

few = settings(max_examples=40, deadline=None)
lengths = st.floats(1, 500).map(lambda x: round(x, 2))
sizes = st.floats(0.2, 8).map(lambda x: round(x, 3))
masses = st.floats(0.5, 200).map(lambda x: round(x, 3))
permilles = st.integers(101, 999)
solid = [one for one in metals() if magnitude(one.density.value, "g/cm**3") > 4]


def results(slug: str, **fields: str) -> dict[str, Any]:
    data = answer(slug, fields)
    assert "errors" not in data, data
    return {name: one["value"] for name, one in data["results"].items()}


def whole(slug: str, **fields: str) -> dict[str, dict[str, Any]]:
    data = answer(slug, fields)
    assert "errors" not in data, data
    found: dict[str, dict[str, Any]] = data["results"]
    return found


# ---- stock-weight


@given(sizes, st.floats(0.1, 3).map(lambda x: round(x, 2)), lengths)
@few
def test_half_round_by_integration(width: float, ratio: float, length: float) -> None:
    """The volume against the outline that is drawn, summed by trapezoids with many more points."""
    height = round(width * ratio, 3)
    assume(height <= 20)
    got = results(
        "stock-weight", shape="half-round", width=f"{width} mm", thickness=f"{height} mm", length=f"{length} mm"
    )

    def rise(x: float) -> float:
        if height >= width / 2:
            return height * math.sqrt(max(0.0, 1 - (2 * x / width) ** 2))
        radius = (width**2 / 4 + height**2) / (2 * height)
        return math.sqrt(max(0.0, radius**2 - x**2)) - (radius - height)

    area, _ = integrate.quad(rise, -width / 2, width / 2, limit=200)
    assert got["volume"] == pytest.approx(area * length, rel=1e-6)
    drawn = outline("half-round", width, height)
    polygon = sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in zip(drawn, drawn[1:] + drawn[:1], strict=True)) / 2
    assert abs(polygon) == pytest.approx(area, rel=0.01)


@given(sizes)
@few
def test_sphere_and_disc_by_integration(diameter: float) -> None:
    sphere = results("stock-weight", shape="sphere", diameter=f"{diameter} mm")
    ball, _ = integrate.quad(lambda z: math.pi * (diameter**2 / 4 - z * z), -diameter / 2, diameter / 2)
    assert sphere["volume"] == pytest.approx(ball, rel=1e-7)
    disc = results("stock-weight", shape="disc", diameter=f"{diameter} mm", thickness="0.7 mm")
    plate, _ = integrate.quad(lambda r: 2 * math.pi * r * 0.7, 0, diameter / 2)
    assert disc["volume"] == pytest.approx(plate, rel=1e-7)


@given(sizes, st.floats(0.05, 0.49), lengths)
@few
def test_a_tube_is_a_rod_less_its_bore(diameter: float, share: float, length: float) -> None:
    wall = round(diameter * share, 4)
    assume(0.02 <= wall < diameter / 2 and diameter - 2 * wall >= 0.05)
    tube = results("stock-weight", shape="tube", diameter=f"{diameter} mm", wall=f"{wall} mm", length=f"{length} mm")
    rod, bore = (
        results("stock-weight", shape="round-wire", diameter=f"{d} mm", length=f"{length} mm")
        for d in (diameter, diameter - 2 * wall)
    )
    assert tube["volume"] == pytest.approx(rod["volume"] - bore["volume"], rel=1e-5, abs=1e-6)


@given(st.sampled_from(["round-wire", "square-wire", "half-round", "strip", "sheet"]), lengths, st.sampled_from(solid))
@few
def test_weight_is_additive_and_knows_no_units(shape: str, length: float, metal: Any) -> None:
    one, two, inches = (
        results("stock-weight", shape=shape, length=text, metal=metal.key)
        for text in (f"{length} mm", f"{2 * length} mm", f"{length / 25.4!r} in")
    )
    assert two["mass"] == pytest.approx(2 * one["mass"], rel=1e-7)
    assert inches["mass"] == pytest.approx(one["mass"], rel=1e-7)


@given(st.sampled_from(["round-wire", "strip", "sheet", "tube", "disc", "sphere"]), masses)
@few
def test_the_size_for_a_weight_has_that_weight(shape: str, wanted: float) -> None:
    asked = results("stock-weight", shape=shape, diameter="4 mm", wanted_mass=f"{wanted} g")
    if "length_for_mass" in asked:
        again = results("stock-weight", shape=shape, diameter="4 mm", length=f"{asked['length_for_mass']} mm")
    else:
        assume(asked["diameter_for_mass"] < 300)
        again = results("stock-weight", shape=shape, diameter=f"{asked['diameter_for_mass']} mm")
    assert again["mass"] == pytest.approx(wanted, rel=1e-6)


# ---- fineness, alloy-up


@given(st.integers(1, 24))
@few
def test_karat_and_permille_are_one_another(karat: int) -> None:
    there = results("fineness", fineness=f"{karat}k")
    back = results("fineness", fineness=f"{there['permille']} ‰")
    assert back["karat"] == pytest.approx(karat, rel=1e-7)
    assert there["permille"] == pytest.approx(karat / 24 * 1000, rel=1e-7)


@given(permilles, permilles, masses, st.floats(0.01, 5).map(lambda x: round(x, 3)))
@few
def test_a_whole_piece_lies_between_its_parts(own: int, other: int, mass: float, added: float) -> None:
    got = results(
        "fineness",
        fineness=f"{own}",
        article_mass=f"{mass} g",
        added_mass=f"{added} g",
        added_fineness=f"{other}",
        law="germany",
    )
    assert min(own, other) - 1e-6 <= got["whole_fineness"] <= max(own, other) + 1e-6
    assert got["whole_fineness"] * (mass + added) == pytest.approx(mass * own + added * other, rel=1e-7)


@given(masses, permilles, permilles, st.integers(0, 1000))
@few
def test_fine_metal_balances(mass: float, have: int, want: int, add: int) -> None:
    data = answer(
        "alloy-up",
        {"mass": f"{mass} g", "from_fineness": f"{have}", "to_fineness": f"{want}", "added_fineness": f"{add} ‰"},
    )
    possible = have == want or (add > want > have) or (add < want < have)
    assert ("errors" not in data) == possible, data
    if possible:
        added = data["results"]["metal_to_add"]["value"]
        assert added >= 0
        assert mass * have + added * add == pytest.approx((mass + added) * want, rel=1e-6)


@given(masses, permilles, permilles)
@few
def test_up_and_down_again_costs_the_metal_of_both(mass: float, low: int, high: int) -> None:
    assume(low < high)
    up = results("alloy-up", mass=f"{mass} g", from_fineness=f"{low}", to_fineness=f"{high}", added_fineness="1000")
    assume(up["total_mass"] < 90_000)
    down = results(
        "alloy-up", mass=f"{up['total_mass']} g", from_fineness=f"{high}", to_fineness=f"{low}", added_fineness="0"
    )
    assert down["total_mass"] * low == pytest.approx(up["fine_metal"] * 1000, rel=1e-6)


# ---- density-check


def kell(t: float) -> float:
    """Water in g/cm³ by Kell 1975, on the older temperature scale.

    Written from Jones and Harris, J. Res. NIST 97 (1992) 335; the divisor's digits from a second copy, as the stored
    text of that paper has two of them swapped.
    """
    top = (
        999.83952
        + 16.945176 * t
        - 7.9870401e-3 * t**2
        - 46.170461e-6 * t**3
        + 105.56302e-9 * t**4
        - 280.54253e-12 * t**5
    )
    return top / (1 + 16.879850e-3 * t) / 1000


@given(st.floats(0, 40))
@few
def test_water_by_another_formula(celsius: float) -> None:
    """The two formulas and temperature scales lie within 0.02 kg/m³ of each other."""
    got = results("density-check", water_temperature=f"{celsius:.3f}")
    assert got["water_density"] == pytest.approx(kell(float(f"{celsius:.3f}")), abs=2e-5)


@given(st.sampled_from(solid), st.floats(50, 2000), st.floats(5, 35), st.sampled_from([0.0001, 0.001, 0.01]))
@few
def test_the_true_metal_is_never_ruled_out(metal: Any, volume: float, celsius: float, digit: float) -> None:
    """Weighings made from a known piece, rounded as a balance rounds, lead back to a range that holds the truth."""
    density = magnitude(metal.density.value, "g/cm**3")
    in_air = volume / 1000 * (density - 0.0012)
    in_water = volume / 1000 * (density - kell(celsius))
    air, water = (round(round(one / digit) * digit, 6) for one in (in_air, in_water))
    assume(air - water > 4 * digit)
    got = whole(
        "density-check",
        mass_in_air=f"{air} g",
        mass_in_water=f"{water} g",
        water_temperature=f"{celsius}",
        readability=f"{digit} g",
    )
    # 3e-5 allows for the other water formula; the balance's own rounding must be inside.
    assert got["density"]["low"] * (1 - 3e-5) <= density <= got["density"]["high"] * (1 + 3e-5)
    assert metal.key in got["could_be"]["metals"]
    assert not set(got["could_be"]["metals"]) & set(got["cannot_be"]["metals"])
    assert len(got["could_be"]["metals"]) + len(got["cannot_be"]["metals"]) == len(metals())
    if "gold_with_silver" in got:
        assert got["gold_with_copper"]["value"] > got["gold_with_silver"]["value"]


@given(st.floats(1, 8), st.floats(0.1, 3), st.floats(2.5, 4.5))
@few
def test_known_stones_are_taken_out(volume: float, carats: float, stone: float) -> None:
    """A piece of 15.45 g/cm³ with a stone of known weight and density reads as its metal alone."""
    volume, carats, stone = volume / 10, round(carats, 2), round(stone, 2)
    mass = 15.45 * volume + carats / 5
    pushed = volume + carats / 5 / stone
    got = results(
        "density-check",
        mass_in_air=f"{mass - pushed * 0.0012!r} g",
        mass_in_water=f"{mass - pushed * 0.9982067!r} g",
        water_temperature="20",
        readability="0.0001 g",
        piece="stones",
        stone_mass=f"{carats} ct",
        stone_density=f"{stone} g/cm3",
    )
    assert got["density"] == pytest.approx(15.45, rel=1e-5)


def test_a_hollow_piece_rules_out_only_what_is_lighter() -> None:
    solid_piece, hollow = (
        whole("density-check", mass_in_air="4 g", mass_in_water="3.65 g", piece=piece) for piece in ("solid", "hollow")
    )
    assert set(solid_piece["could_be"]["metals"]) <= set(hollow["could_be"]["metals"])
    assert "24k-yellow" in hollow["could_be"]["metals"]
    assert "sterling" in hollow["cannot_be"]["metals"]


def test_fine_gold_is_never_told_from_tungsten() -> None:
    data = answer("density-check", {"mass_in_air": "19.3 g", "mass_in_water": "18.302 g", "readability": "0.001 g"})
    assert any("Tungsten" in one["text"] for one in data["cautions"])
    assert any("never proves" in one["text"] for one in data["cautions"])


# ---- link-wire


@given(sizes, st.floats(1.2, 12), st.floats(0, 0.5), st.floats(0, 2))
@few
def test_a_turn_is_a_helix(wire: float, ratio: float, kerf: float, gap: float) -> None:
    inside = round(wire * ratio, 3)
    fields = {"inside_diameter": f"{inside} mm", "wire": f"{wire} mm", "kerf": f"{kerf} mm", "coil_gap": f"{gap} mm"}
    data = answer("link-wire", fields)
    assume("errors" not in data)
    got = {name: one["value"] for name, one in data["results"].items()}
    radius, pitch = (got["mandrel"] + wire) / 2, wire + gap

    def speed(turn: float) -> float:
        along = 2 * math.pi * radius * math.sin(2 * math.pi * turn), 2 * math.pi * radius * math.cos(2 * math.pi * turn)
        return math.hypot(*along, pitch)

    by_quadrature, _ = integrate.quad(speed, 0, 1)
    assert got["link_length"] == pytest.approx(by_quadrature, rel=1e-6)
    closed = (math.pi * (got["mandrel"] + wire) - kerf) / math.pi - wire
    assert closed == pytest.approx(inside, rel=1e-5, abs=1e-6)
    assert got["wire_length"] == pytest.approx(25 * got["link_length"] + 10, rel=1e-6)


@given(st.integers(1, 500))
@few
def test_more_links_need_more_wire(count: int) -> None:
    one, two = (results("link-wire", count=str(n), spare="0") for n in (count, 2 * count))
    assert two["wire_length"] == pytest.approx(2 * one["wire_length"], rel=1e-6)
    assert two["mass"] == pytest.approx(2 * one["mass"], rel=1e-6)
    assert two["chain_length"] > one["chain_length"]


# ---- finish-loss, settlement


@given(st.integers(0, 3), st.integers(0, 3), st.sampled_from(["one", "both"]))
@few
def test_losses_add_up(files: int, emery: int, faces: str) -> None:
    none = dict.fromkeys(("rubber_passes", "cutting_buff_passes", "color_buff_passes", "tumble_passes"), "0")
    common = {"faces": faces, "thickness": "3 mm", **none}
    both = whole("finish-loss", file_passes=str(files), emery_passes=str(emery), **common)["thickness_lost"]
    file_only = whole("finish-loss", file_passes=str(files), emery_passes="0", **common)["thickness_lost"]
    emery_only = whole("finish-loss", file_passes="0", emery_passes=str(emery), **common)["thickness_lost"]
    for end in ("low", "value", "high"):
        assert both[end] == pytest.approx(file_only[end] + emery_only[end], abs=1e-7)
    assert both["low"] <= both["value"] <= both["high"]


@given(masses, permilles, st.floats(0, 40), st.floats(0, 40), st.floats(0, 100))
@few
def test_nothing_is_made_in_the_crucible(mass: float, assay: int, dirt: float, loss: float, paid: float) -> None:
    got = results(
        "settlement",
        mass=f"{mass} g",
        assay=f"{assay}",
        dirt=f"{dirt:.3f}",
        melt_loss=f"{loss:.3f}",
        paid_share=f"{paid:.3f}",
    )
    assert (
        0 <= got["paid_metal"] <= got["fine_metal"] * (1 + 1e-9) <= got["melted_mass"] * (1 + 1e-8) <= mass * (1 + 1e-7)
    )
    clean = results("settlement", mass=f"{mass} g", assay=f"{assay}", dirt="0", melt_loss="0", paid_share="100")
    assert clean["paid_metal"] == pytest.approx(mass * assay / 1000, rel=1e-7)


# ---- the fields of this topic


@given(st.integers(1, 24), st.sampled_from(["k", " k", "kt", " ct", " karat", "K"]))
@few
def test_karats_as_typed(karat: int, word: str) -> None:
    read = Fineness(name="x", label="Fineness", example="14k").read(f"{karat}{word}")
    assert magnitude(read.permille, "permille") == pytest.approx(1000 * karat / 24)
    assert read.way == "k"


@pytest.mark.parametrize("text", ["585", ".585", "58.5 %", "58,5%", "585‰", "585 fine", "0.585"])
def test_the_same_fineness_in_many_ways(text: str) -> None:
    read = Fineness(name="x", label="Fineness", example="14k").read(text)
    assert magnitude(read.permille, "permille") == pytest.approx(585)


@pytest.mark.parametrize(
    ("text", "of_a_gram"), [("62.5", 62.5), ("1950/ozt", 62.694), ("97.2 per dwt", 62.501), ("62500/kg", 62.5)]
)
def test_prices_as_typed(text: str, of_a_gram: float) -> None:
    read = Price(name="x", label="Price").read(text)
    assert magnitude(read, "money/g") == pytest.approx(of_a_gram, abs=0.0005)


def test_metal_calculators_are_all_found() -> None:
    wanted = {
        "stock-weight", "gauge", "fineness", "alloy-up", "density-check", "link-wire", "finish-loss", "settlement",
    }  # fmt: skip
    assert wanted <= set(all_calculators())
