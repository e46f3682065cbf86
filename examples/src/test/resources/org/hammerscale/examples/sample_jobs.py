"""Recomputes the two sample jobs by hand arithmetic, without the library, and prints sample_jobs.csv.

Run: python3 sample_jobs.py > sample_jobs.csv
Rules: strip that closes with a square end, rho (2 pi - acos(r / R)), and a full turn pi (d + t) in front of it, which a
thickness of the hand's error may pass (plane geometry); prismoidal mean section; EN 1993-1-2, 3.4.1, elongation of
carbon steel. What the fire takes: the growth of scale by Mi, no faster than the 1 um/s of metal that still air feeds,
on the mean of the taper's surface before and after; at worst twice as much, and as many more heats as the sheet says,
which err apart. The number of heats is taken from the front of the sheet. Holes are taken as printed; the iron under
each is computed, and its distance from seams checked.
"""

from math import acos, ceil, exp, floor, hypot, log, pi, radians, sqrt, tan

JOBS = {
    "Walled-garden gate": dict(
        unit="in", rule=1 / 16, w=1.5, t=0.25, pin=0.5, clear=1 / 64, coat=0.003, gap=1 / 32, tool=1 / 64,
        tip=(0.75, 0.125), heat=(2000 - 32) / 1.8, red=(1200 - 32) / 1.8, notch=0.5,
        leaves=dict(door=(18, 9, 4, 6), post=(7, 2, 3, 4)), at_heat=30,
        head=0.385, hole=13 / 64, angle=82, diameter=0.19, seam=1 / 16,
        seams=dict(door=(4.5, 9.5, 14.5), post=()),
        holes=dict(door=(15 / 16, 5.5, 8.5, 12 + 15 / 16, 16 + 15 / 16), post=(15 / 16, 3.75, 6 + 9 / 16))),
    "Boathouse door": dict(
        unit="mm", rule=1, w=40, t=6, pin=14, clear=0.5, coat=0.08, gap=0.5, tool=0.5,
        tip=(20, 4), heat=1100, red=650, notch=14,
        leaves=dict(door=(420, 180, 4, 6), post=(160, 40, 2, 3)), at_heat=30,
        head=9.2, hole=5.5, angle=90, diameter=5, seam=2,
        seams=dict(door=(95, 215, 335), post=()),
        holes=dict(door=(24, 131, 178, 256, 299, 410), post=(24, 87, 150))),
}


def elongation(celsius):
    if celsius < 750:
        return 1.2e-5 * celsius + 0.4e-8 * celsius**2 - 2.416e-4
    return 1.1e-2 if celsius <= 860 else 2e-5 * celsius - 6.2e-3


def metal_once(celsius, seconds):
    """Millimetres of metal lost in one heat: x^2 / k + x / l = t."""
    iron = 55.845 / (55.845 + 15.999)  # of the mass of FeO, 5.745 g/cm3; iron has 7.874 g/cm3
    k = 534 / exp(20319 / (celsius + 273.15)) * (5.745 * iron / 7.874) ** 2
    l = 1e-3
    return k / l * (sqrt(1 + 4 * l * l * seconds / k) - 1) / 2


def up(x, step):
    return ceil(x / step - 1e-9) * step


def nearest(x, step):
    return floor(x / step + 0.5) * step


print("# printed by sample_jobs.py, which computes the sample order again without the library")
print("job,what,expected,unit,tolerance,kind")
for name, j in JOBS.items():
    unit, rule, t = j["unit"], j["rule"], j["t"]

    def row(what, value, tolerance=0.0):
        # What lies on a mark is exact; the rest is good to what is printed of it.
        print(f"{name},{what},{value:.6f},{unit},{tolerance},computed")

    bore = j["pin"] + j["clear"] + 4 * j["coat"]
    r, outer = bore / 2, bore / 2 + t
    strip = (bore + t) / 2 * (2 * pi - acos(r / outer))
    front = up(max(pi * (bore + t), strip), rule)
    row("reference", front)
    row("strip", nearest(strip, rule))
    a0, a1 = j["w"] * t, j["tip"][0] * j["tip"][1]
    middle = (j["w"] + j["tip"][0]) / 2 * (t + j["tip"][1]) / 2
    once = metal_once(j["heat"], j["at_heat"]) / (25.4 if unit == "in" else 1)
    for leaf, (length, taper, heats, most) in j["leaves"].items():
        plain = length - taper
        used = taper * (a0 + 4 * middle + a1) / 6 / a0
        before = 2 * (j["w"] + t) * used
        after = (j["w"] + j["tip"][0] + t + j["tip"][1]) * taper
        likely = heats * once * (before + after) / 2 / a0
        high = likely * exp(hypot(log(2), log(most / heats)))
        behind = up(plain + used + high, rule)
        row(f"{leaf} cut", front + behind)
        row(f"{leaf} mark", nearest(plain, rule))
        row(f"{leaf} off at tip", (behind - plain - used - likely) * a0 / a1, 1e-6)
    joint = up(j["gap"], rule)
    part = (j["w"] - 2 * joint) / 3
    one = nearest(part, rule)
    two = nearest(2 * part + joint, rule)
    row("joint", joint)
    for what, value in [("door slot 1 end", one + joint), ("door slot 2 start", two), ("post slot start", one),
                        ("post slot end", two + joint)]:
        row(what, value)
    # Every joint again, end by end: a slot's edge less the end of the knuckle that turns in it.
    assert abs((one + joint) - one - joint) < 1e-12 and abs((two + joint) - two - joint) < 1e-12
    row("floor from end", front + j["notch"])
    e = elongation(j["heat"])
    sizes = [floor(bore * (1 + e) / j["tool"]) * j["tool"], ceil(bore * (1 + e) / j["tool"]) * j["tool"]]
    drift = min((s for s in sizes if s / (1 + e) > j["pin"] + 4 * j["coat"]), key=lambda s: abs(s / (1 + e) - bore))
    row("drift", drift)
    row("bore left", drift / (1 + e), 1e-6)
    row("play", drift / (1 + e) - j["pin"] - 4 * j["coat"], 1e-6)
    swage = nearest(2 * outer * (1 + e), j["tool"])
    row("swage", swage)
    row("barrel left", swage / (1 + e), 1e-6)
    red = elongation(j["red"])
    row("bore at dull red", drift / (1 + e) * (1 + red), 1e-6)
    row("barrel at dull red", swage / (1 + e) * (1 + red), 1e-6)
    cone = (j["head"] - j["hole"]) / 2 / tan(radians(j["angle"] / 2))
    for leaf, places in j["holes"].items():
        length, taper, _, _ = j["leaves"][leaf]
        for i, x in enumerate(places):
            thick = t - max(0, x - (length - taper)) / taper * (t - j["tip"][1])
            assert thick - cone >= thick / 4, (name, leaf, x)
            # EN 1995-1-1, table 8.2, holes drilled first, pulled across the grain: 7 d from a loaded edge, 5 d below
            # 5 mm; 4 d apart, 0.7 of it under steel.
            edge = (7 if j["diameter"] * (25.4 if unit == "in" else 1) >= 5 else 5) * j["diameter"]
            assert all(abs(x - s) >= j["seam"] / 2 + edge for s in j["seams"][leaf]), (name, leaf, x)
            assert i == 0 or x - places[i - 1] >= 0.7 * 4 * j["diameter"]
            row(f"{leaf} hole {i + 1}", x)
            row(f"{leaf} iron {i + 1}", thick - cone, 1e-6)
