"""How long the shielding gas lasts."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..drawing import Drawing
from ..fields import Amount, Count
from ..units import Quantity, magnitude


@calculator(
    title="Shielding gas left",
    purpose="Minutes of flow and jobs that are left in the cylinder.",
    fields=[
        Amount(
            name="flow", label="Flow", example="6 L/min", of="L/min", low=0.5, high=40,
            hint="Liters a minute at the nozzle. Gentle and close beats hard and far.",
        ),
        Amount(
            name="pre_flow", label="Gas before the first pulse", example="0.5 s", of="s", low=0, high=20,
            hint="Each time you press the pedal.",
        ),
        Amount(name="post_flow", label="Gas after the last pulse", example="1 s", of="s", low=0, high=60),
        Count(name="pulses", label="Pulses in one job", example="60", low=1, high=100000),
        Amount(name="rate", label="Pulses a second", example="3 Hz", of="Hz", low=0.1, high=100),
        Count(name="bursts", label="Pedal pressed in one job", example="12", low=1, high=10000),
        Amount(
            name="cylinder", label="Cylinder size", example="10 L", of="L", low=0.1, high=100,
            hint="Its water volume, stamped on the shoulder.",
        ),
        Amount(name="pressure", label="Pressure on the gauge", example="120 bar", of="bar", low=1, high=300),
        Amount(
            name="reserve", label="Pressure you leave in it", example="5 bar", of="bar", low=0, high=50,
            hint="So that no air gets in (from memory; ask your supplier).", group="What you leave",
        ),
    ],
    results=[
        Result("minutes", "Minutes of flow left", "min", 1),
        Result("jobs", "Jobs left", "", 1),
        Result("gas_per_job", "Gas for one job", "L", 0.1),
        Result("gas_left", "Gas left", "L", 10),
    ],
    sources=["boyle"],
    cautions=[
        "Argon smothers without warning in a small or low room: air the room, and chain the cylinder upright.",
        "Open the regulator slowly and stand aside of it. The supplier's rules come first.",
    ],
)  # fmt: skip
def gas(
    working: Working,
    flow: Quantity,
    pre_flow: Quantity,
    post_flow: Quantity,
    pulses: Quantity,
    rate: Quantity,
    bursts: Quantity,
    cylinder: Quantity,
    pressure: Quantity,
    reserve: Quantity,
) -> None:
    """Volume times pressure (a few percent off at high pressure), over what one job lets out."""
    if magnitude(bursts) > magnitude(pulses):
        working.complain("bursts", "The pedal can't be pressed more often than there are pulses: enter fewer")
        return
    if magnitude(reserve, "bar") >= magnitude(pressure, "bar"):
        working.complain(
            "pressure", "The cylinder is already at what you leave in it: change it, or enter a smaller reserve"
        )
        return
    one_bar = pressure / pressure.to("bar").magnitude
    left = working.step(
        "Gas left, at the pressure of the room", "cylinder * (pressure - reserve) / one_bar", "L",
        cylinder=cylinder, pressure=pressure, reserve=reserve, one_bar=one_bar,
    )  # fmt: skip
    minutes = working.step("Minutes of flow", "left / flow", "min", left=left, flow=flow)
    working.result("minutes", minutes)
    time = working.step(
        "Flow in one job", "bursts * (pre_flow + post_flow) + (pulses - bursts) / rate", "s",
        bursts=bursts, pre_flow=pre_flow, post_flow=post_flow, pulses=pulses, rate=rate,
    )  # fmt: skip
    each = working.step("Gas for one job", "flow * time", "L", flow=flow, time=time)
    jobs = working.step("Whole jobs", "floor(left / gas_per_job)", "", left=left, gas_per_job=each)
    working.result("jobs", jobs)
    working.result("gas_per_job", each)
    working.result("gas_left", left)
    if magnitude(jobs) < 5:
        working.verdict = "Order gas now: fewer than five jobs are left."
    else:
        idle = magnitude(bursts) * magnitude(pre_flow + post_flow, "s") / max(magnitude(time, "s"), 1e-9)
        working.verdict = f"Before and after flow takes {100 * idle:.0f} % of the gas."
    if magnitude(pre_flow, "s") + magnitude(post_flow, "s") == 0:
        working.caution("Without flow before and after, air reaches the hot spot: soot, pits, and spoiled titanium.")
    parts = (bursts * pre_flow, (pulses - bursts) / rate, bursts * post_flow)
    before, during, after = (magnitude(one, "s") for one in parts)
    working.draw(_picture(before, during, after))


def _picture(before: float, during: float, after: float) -> Drawing:
    """The gas of one job as a bar: before, during and after the pulses, to the scale of time."""
    whole = before + during + after or 1.0
    told = f"Of one job's gas {before:.0f} s flow before, {during:.0f} s during and {after:.0f} s after the pulses."
    picture = Drawing(640, 150, "Where one job's gas goes", told, scale=1)
    left = 20.0
    parts = ((before, "before", "gas", 118), (during, "pulses", "hot", 40), (after, "after", "gas", 118))
    for seconds, words, kind, line in parts:
        width = 600 * seconds / whole
        if width > 0:
            picture.rectangle(left, 54, width, 40, kind)
            picture.text(left + width / 2, line, f"{words} {seconds:.0f} s")
        left += width
    return picture
