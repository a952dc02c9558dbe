"""Figures without a unit: a number in running text that measures something and doesn't say in what.

A heuristic with a short list of what is right without a unit:

- a unit, a percent sign or a degree stands behind the number, or behind the range, product or list it is part of;
- it counts: a whole number right before a word that can be a thing (3 spots, 20 light pulses), never a decimal;
- it is a name: step 3, No. 4, size 7, US 6 1/2, ISO 5817, class 4, a karat, a fineness, a year, a date;
- it is a ratio: 10×, 3 to 1, 1:4, 3 of 4, 0.7 of the width, a factor of 2, twice as a formula with = or ÷ in it.
"""

from __future__ import annotations

import re

_TOKEN = re.compile(
    r"(?P<number>\.?\d+(?:[.,]\d+)*(?: \d/\d+|[½¼¾⅓⅔])?(?:/\d+)?|[½¼¾⅓⅔])"
    r"|(?P<word>[^\W\d_]+[²³]?(?:['’][^\W\d_]+)?)|(?P<mark>\S)"
)


def _set(text: str) -> frozenset[str]:
    return frozenset(text.split())


# An equals sign, a bracket or a letter reckoned with: numbers beside its operators are pure.
_FORMULA = re.compile(r"[=÷π√]|[)\]]\s?[×+/−]|[×+/−]\s?\(|[×/]\s[a-z]+\s[×/]|[−+] n\b|log")
# Symbols as they are written, then words in the singular.
UNITS = _set(
    "mm mm² mm³ cm cm² cm³ m m² m³ µm nm km in ft mg µg g kg lb oz ozt dwt gr ct ga J kJ mJ W kW V A mA N kN kgf Pa kPa"
    " MPa GPa Hz kHz MHz K C F L ml mL l HV s ms µs ns h min bar psi dB ppm mol OD pt rad sr k meter millimeter"
    " micrometer nanometer centimeter gram milligram kilogram joule watt volt amp ampere newton pascal second minute"
    " hour day week month year liter inch inches foot feet ounce pound pennyweight grain carat karat gauge degree"
    " percent permille thousandth hundredth tenth radian step size time turn part point o'clock"
)
SIGNS = _set("% ‰ ° × ⁿ ′ ″")
# What stands between the numbers of a range, a product or a list.
_JOINS = _set("to or and by through then up about under over × x + – - − ± / · , ÷ (")
# Before a unit: 5 US sizes, 2 troy ounces.
_BEFORE_UNIT = _set("us uk troy square cubic metric half whole full")
# A number behind one of these is its name.
_NAMED = _set(
    "step part row column section chapter article table figure fig page p pp no nos number entry entries size us uk eu"
    " iso jis din en iec ansi astm asm class classes grade type level layer question version edition volume vol rule"
    " act title directive regulation schedule annex code model fineness mark marked stamp stamped january february"
    " march"
    " april may june july august september october november december factor ratio alloy steel filter shade category"
    " scale japan japanese french swiss italian german case line paragraph power grit emery paper needle cut blade spot"
    " shot gauge drill answer place pass pair sitting measures s h sr lb z chf eur usd subsection annex entry"
    " share shares β φ"
)
# Of these, what is told apart by whole numbers only: spot 5 is a name, spot 0.5 a size.
_NUMBERED = _set("step pair sitting spot shot place pass question answer blade needle piece row column line page")
_NAMING_SIGNS = _set("$ € £ § # ≈")
_FINENESSES = _set(
    "333 375 416 417 500 583 585 600 620 625 650 750 800 830 833 835 850 875 900 916 917 925 935 950 958 980 990 995"
    " 999 999.9 1000"
)
# Alloys named by their shares: 18/8, 70/30, 65-18-17.
_SHARES = re.compile(r"\d\d-\d\d-\d\d|\b(?:[Bb]rass|[Ss]teel) \d\d/\d\d?|\d\d/\d\d? (?:brass|steel|link)")
# A whole number right before one of these counts nothing.
_NOT_A_THING = _set(
    "a an the and or but nor so as at by for from in into of off on onto out over per than then that this to under"
    " until up upon when where which while who with without is are was were be been has have had do does did can may"
    " must not"
    " no if because before after each every both either it its they them their you your we our he she deep wide long"
    " thick high across apart away proud below above along back allows means puts covers only lets"
)


def unmeasured(sentence: str) -> list[str]:
    """The numbers of a sentence that need a unit and have none, each with the words around it."""
    tokens = list(_TOKEN.finditer(sentence))
    formula = _FORMULA.search(sentence) is not None
    found = []
    for place, token in enumerate(tokens):
        if (
            token.lastgroup == "number"
            and not (formula and _beside_operator(tokens, place))
            and not _right(tokens, place)
        ):
            found.append(sentence[max(0, token.start() - 25) : token.end() + 25].strip())
    return found


def _beside_operator(tokens: list[re.Match[str]], place: int) -> bool:
    beside = tokens[max(0, place - 1) : place] + tokens[place + 1 : place + 2]
    return any(token.group() in "×÷=+−–-/√()^²³" for token in beside)


def _right(tokens: list[re.Match[str]], place: int) -> bool:
    number = tokens[place].group()
    after = _after_chain(tokens, place)
    first, ahead = _at(tokens, place + 1), _at(tokens, after)
    if _is_unit(tokens, after) or _is_unit(tokens, place + 1):
        return True
    if any(one.start() <= tokens[place].start() < one.end() for one in _SHARES.finditer(tokens[place].string)):
        return True
    if _named(tokens, place) or _is_fineness(number) or re.fullmatch(r"1[4-9]\d\d|20\d\d", number):
        return True
    if first == "of" or ahead == "of" or _share(tokens, place) or _glued(tokens, place) or _listing(tokens, place):
        return True
    if re.search(rf"(?:^|\D){re.escape(number)}:\d|\d:{re.escape(number)}(?:\D|$)", tokens[place].string):
        return True
    counts = re.fullmatch(r"\d+|\d{1,3}(?:,\d{3})+", number) is not None
    return counts and ahead[:1].isalpha() and ahead.lower() not in _NOT_A_THING


def _is_fineness(number: str) -> bool:
    """A fineness that is stamped, or one worked out to the hundredth of a part in a thousand."""
    return number in _FINENESSES or re.fullmatch(r"[3-9]\d\d\.\d\d", number) is not None


def _listing(tokens: list[re.Match[str]], place: int) -> bool:
    """A caption's own number (“2, a bead wider than the hole.”), or a paragraph of a law: (4)."""
    if not tokens[place].group().isdigit():
        return False
    in_brackets = _at(tokens, place - 1) == "(" and _at(tokens, place + 1) == ")"
    return in_brackets or (place == 0 and _at(tokens, 1) in {",", ":"})


def _share(tokens: list[re.Match[str]], place: int) -> bool:
    """The 10 of “9 of 10”."""
    return place >= 2 and _at(tokens, place - 1) == "of" and tokens[place - 2].lastgroup == "number"


def _at(tokens: list[re.Match[str]], place: int) -> str:
    return tokens[place].group() if 0 <= place < len(tokens) else ""


def _glued(tokens: list[re.Match[str]], place: int) -> bool:
    """Part of a code such as 14k, 304L, M2, EN-13919-1: letters touch the number."""
    before, after = place - 1, place + 1
    touches_before = before >= 0 and tokens[before].end() == tokens[place].start()
    touches_after = after < len(tokens) and tokens[after].start() == tokens[place].end()
    return (touches_before and (_at(tokens, before)[-1:].isalpha() or _at(tokens, before) in "-–")) or (
        touches_after and _at(tokens, after)[:1].isalpha()
    )


def _after_chain(tokens: list[re.Match[str]], place: int) -> int:
    """The place behind a number and all that is joined to it: behind 3.0 × 1.5 for its 3.0."""
    here = place + 1
    while here < len(tokens):
        ahead = here
        while ahead < len(tokens) and _at(tokens, ahead) in _JOINS:
            ahead += 1
        if ahead < len(tokens) and tokens[ahead].lastgroup == "number":
            here = ahead + 1
        else:
            break
    return here


def _is_unit(tokens: list[re.Match[str]], place: int) -> bool:
    while _at(tokens, place).lower() in _BEFORE_UNIT or _at(tokens, place) == "-":
        place += 1
    word = _at(tokens, place)
    if word == "×":  # 10×, but not 3 × 1
        return place + 1 >= len(tokens) or tokens[place + 1].lastgroup != "number"
    return word in UNITS or word in SIGNS or word.lower().removesuffix("s") in UNITS


def _named(tokens: list[re.Match[str]], place: int) -> bool:
    """Whether a name stands before the number or before the list it belongs to."""
    here = place - 1
    while here >= 0 and (_at(tokens, here) in _JOINS or _at(tokens, here) == "." or tokens[here].lastgroup == "number"):
        here -= 1
    word = _at(tokens, here)
    if word == "of":  # a factor of 2
        word = _at(tokens, here - 1)
    if not tokens[place].group().isdigit() and word.lower().removesuffix("s") in _NUMBERED:
        return False
    return word in _NAMING_SIGNS or word.lower() in _NAMED or word.lower().removesuffix("s") in _NAMED
