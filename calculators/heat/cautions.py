"""What every settings answer says about harm, and how what was typed is turned into the model's shots."""

from __future__ import annotations

PROVE = "A starting point, not a setting. Prove it on scrap of the same metal and thickness before you touch the piece."
LIGHT = (
    "Class 4 light blinds without pain, straight or off polished metal: keep enclosure, interlock and viewing filter "
    "in order. The maker's manual and your laser safety officer come first."
)
FUME = "Hot metal fumes: draw it off at the work. Cadmium and beryllium must not be fused at all."
ARC = (
    "An arc blinds and burns skin with ultraviolet light: shutter or filter for everyone near, every pulse. Keep the "
    "current's return path away from stones and hinges; no one with a pacemaker works near it."
)
MODEL = (
    "The model is checked against numerical solutions, not against published welds, as none with all its figures was "
    "found. Your own test spots decide."
)
SETTINGS = (PROVE, LIGHT, FUME)
ZINC = "This alloy may hold zinc, which boils at 907 °C: hit hard it fumes, spits and pits. Go softer and longer."
NICKEL = "White gold with nickel can crack when it cools too fast: overlap warm spots, ramp the pulse down."
TITANIUM = "Keep titanium under argon until it no longer glows: straw color is a warning, blue or white is scrap."
PALLADIUM = "Palladium takes up gas and pores without argon around the spot."


def of_metal(key: str) -> list[str]:
    """Cautions that belong to a metal."""
    found = []
    if key.endswith("yellow") and not key.startswith(("24k", "22k", "18k")):
        found.append(ZINC)
    if "nickel" in key:
        found += [NICKEL, ZINC]
    if key.startswith("titanium"):
        found.append(TITANIUM)
    if key.startswith("palladium"):
        found.append(PALLADIUM)
    return found
