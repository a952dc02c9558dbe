"""The working of one pulse, line by line, so that every number can be checked with a pocket calculator."""

from __future__ import annotations

import math

from ..declare import Working
from ..units import Quantity, quantity
from .heat_metals import HeatMetal, cite_heat
from .melt_table import LARGEST_BETA, melt_table
from .pool import Pool, Shot, boiling_beta, groups, pool
from .ranges import Known

_THICK_FORM = (
    "2 * sqrt(Fo) * (1 / sqrt(pi) - exp(-1 / (4 * Fo)) / sqrt(pi) + erfc(1 / (2 * sqrt(Fo))) / (2 * sqrt(Fo)))"
)


def work_pulse(working: Working, heat: HeatMetal, one: Known, shot: Shot) -> Pool:
    """Write down how the pool of ``shot`` is found, at the middle of what is known; returns it."""
    metal = one.nominal
    names = ("density", "heat_capacity", "latent_heat", "conductivity", "conductivity_liquid", "solidus", "liquidus")
    facts = cite_heat(working, heat, (*names, "boiling"))
    absorbed = quantity(one.absorptivity.value)
    if one.absorptivity.typed_range or one.absorptivity.value != float(heat.absorptivity.value.magnitude):
        working.note("Share of the energy taken in", "typed by you", absorbed, "")
    else:
        working.figure("Share of the light taken in", heat.absorptivity)
        working.figure("For comparison, a clean mirror takes in", heat.polished)
    start = quantity(metal.start + 273.15, "K")
    middle = working.step(
        "Middle of the melting range",
        "(solidus + liquidus) / 2",
        "K",
        solidus=facts["solidus"].to("K"),
        liquidus=facts["liquidus"].to("K"),
    )
    rise = working.step("Rise to melting", "melting - start", "K", melting=middle, start=start)
    alpha = working.step(
        "How fast heat spreads",
        "conductivity / (density * heat_capacity)",
        "mm**2/s",
        conductivity=facts["conductivity"],
        density=facts["density"],
        heat_capacity=facts["heat_capacity"],
    )
    spot, duration = quantity(shot.spot * 1e3, "mm"), quantity(shot.duration * 1e3, "ms")
    fo = working.step(
        "Fourier number Fo: how far heat gets in the pulse, by the spot",
        "alpha * duration / (spot / 2) ** 2",
        "",
        alpha=alpha,
        duration=duration,
        spot=spot,
    )
    flux = working.step(
        "Heat taken in on each square millimeter",
        "taken_in * energy / duration / (pi * (spot / 2) ** 2)",
        "W/mm**2",
        taken_in=absorbed,
        energy=quantity(shot.energy, "J"),
        duration=duration,
        spot=spot,
    )
    beta = _beta(working, shot, fo, flux, facts["conductivity"], rise, one)
    found = pool(shot, metal, one.absorptivity.value, one.efficiency.value)
    if found.regime == "no melt":
        return found
    _depth(working, shot, one, float(beta.magnitude), found)
    return found


def _beta(
    working: Working, shot: Shot, fo: Quantity, flux: Quantity, conductivity: Quantity, rise: Quantity, one: Known
) -> Quantity:
    """β by the closed form, with images where the back of the plate counts."""
    fourier, _, centre = groups(shot, one.nominal)
    thick = centre - _thick_rise(fourier) < 1e-6 * centre
    if thick:
        shape = working.step("Closed form at the center of the spot, thick metal", _THICK_FORM, "", Fo=fo)
    else:
        how = "sum of the same form over images of the spot at 2, 4, 6 ... thicknesses"
        shape = working.note("Closed form at the center of the spot, plate", how, quantity(centre), "")
    return working.step(
        "β: center temperature without melting, by that of melting (1 = first melt mark)",
        "flux * spot / 2 / (conductivity * rise) * shape",
        "",
        flux=flux,
        spot=quantity(shot.spot * 1e3, "mm"),
        conductivity=conductivity,
        rise=rise,
        shape=shape,
    )


def _thick_rise(fourier: float) -> float:
    root = 2 * math.sqrt(fourier)
    x = 1 / root
    return root * (1 - math.exp(-x * x)) / math.sqrt(math.pi) + math.erfc(x)


def _depth(working: Working, shot: Shot, one: Known, beta: float, found: Pool) -> None:
    """What the table holds back, the depth, and the energy balance where the surface boils."""
    metal = one.nominal
    fourier, thick, _ = groups(shot, metal)
    edge = boiling_beta(metal)
    counted = min(beta, edge, LARGEST_BETA)
    node = melt_table().at(fourier, counted, metal.ste, metal.kappa, thick)
    working.note(
        "Share of the overshoot that melting holds back",
        "melt table of the solver at Fo, β, Ste = c × rise ÷ latent heat, κ = liquid ÷ solid conductivity, thickness",
        quantity(node.hold),
        "",
    )
    calm = (
        found
        if found.regime == "conduction"
        else pool(
            shot.with_energy(shot.energy * edge / beta * 0.999999), metal, one.absorptivity.value, one.efficiency.value
        )
    )
    working.note(
        "Depth where the closed form falls to 1 + held back × (β − 1)"
        + ("" if beta <= edge else ", surface just boiling"),
        "found as a root",
        quantity(calm.depth * 1e3, "mm"),
        "mm",
    )
    if found.regime == "conduction":
        return
    working.step(
        "Deep weld by energy: half a cylinder as wide as the pool",
        "8 * efficiency * energy / (pi * width ** 2 * density * (heat_capacity * rise + latent_heat))",
        "mm",
        efficiency=quantity(one.efficiency.value),
        energy=quantity(shot.energy, "J"),
        width=quantity(found.width * 1e3, "mm"),
        density=quantity(metal.density, "kg/m**3"),
        heat_capacity=quantity(metal.heat_capacity, "J/(kg*K)"),
        rise=quantity(metal.rise, "K"),
        latent_heat=quantity(metal.latent_heat / 1e3, "J/g"),
    )
    working.note(
        "Depth between the two, by how far β is past boiling",
        f"geometric mean, from conduction at β = {edge:.2f} to the balance at β = {3 * metal.boiling_scaled:.2f}",
        quantity(found.depth * 1e3, "mm"),
        "mm",
    )
