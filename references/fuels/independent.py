"""Writes the exact-*.csv tables beside it, and exact.csv of ../atmosphere: the published equations in 50-digit decimals.

Run: python3 independent.py. It shares no code with the library: roots by plain halving, logarithms by decimal.
"""
from decimal import Decimal as D, getcontext
from pathlib import Path

getcontext().prec = 50
HERE = Path(__file__).parent
OBTAINED = "2026-11-25"
PSI = D("0.45359237") * D("9.80665") / D("0.0254") ** 2


def write(path, source, covers, columns, rows):
    header = [
        "# kind: independent arithmetic (checks the code, not the physics)",
        f"# source: {source}; independent.py, Python decimal at 50 digits",
        "# status: computed",
        f"# obtained: {OBTAINED}",
        "# precision: 17 figures",
        f"# covers: {covers}",
        ",".join(columns),
    ]
    lines = [",".join(f"{cell:.16e}" if isinstance(cell, D) else str(cell) for cell in row) for row in rows]
    path.write_text("\n".join(header + lines) + "\n")


def z_of(v):
    return v + D("0.7") + (D("-1.47") - D("1.84") * v - D("0.51") * v * v).exp()


def v_of(z):
    low, high = D(0), z
    for _ in range(170):
        middle = (low + high) / 2
        low, high = (middle, high) if z_of(middle) < z else (low, middle)
    return low


def d341(t1, v1, t2, v2, t):
    w1, w2 = z_of(v1).log10().log10(), z_of(v2).log10().log10()
    b = (w1 - w2) / (t2.log10() - t1.log10())
    a = w1 + b * t1.log10()
    return a, b, v_of(D(10) ** (D(10) ** (a - b * t.log10())))


def rows_d341():
    cases = [
        ("253.15", "24", "293.15", "5", "273.15", "summer diesel"),
        ("253.15", "4.5", "313.15", "1.31", "233.15", "jet fuel colder than its points"),
        ("253.15", "0.9", "293.15", "0.55", "313.15", "petrol warmer than its points"),
        ("253.15", "0.9", "293.15", "0.55", "333.15", "petrol at the thin end"),
        ("293.15", "130", "313.15", "50", "253.15", "thick oil in the cold"),
        ("273.15", "12.2", "313.15", "4.1", "273.15", "on a point"),
        ("273.15", "0.4", "313.15", "0.22", "313.15", "the least viscosity the equation takes"),
    ]
    for *numbers, why in cases:
        t1, v1, t2, v2, t = map(D, numbers)
        a, b, v = d341(t1, v1, t2, v2, t)
        yield (*numbers, a, b, v, why)


def rows_volume():
    table = {
        "fuel oil": lambda r: D("186.9696") / r**2 + D("0.4862") / r,
        "jet fuel": lambda r: D("594.5418") / r**2,
        "transition": lambda r: D("-0.00336312") + D("2680.3206") / r**2,
        "petrol": lambda r: D("346.4228") / r**2 + D("0.4388") / r,
        "crude": lambda r: D("613.9723") / r**2,
    }
    for group, density, t in [
        ("fuel oil", "840", "40"), ("fuel oil", "839", "-20"), ("jet fuel", "838.5", "-20"), ("jet fuel", "788", "60"),
        ("transition", "787.5", "60"), ("transition", "770.5", "-30"), ("petrol", "770", "-30"), ("petrol", "745", "15"),
        ("crude", "860", "50"),
    ]:
        r, dt = D(density), D(t) - 15
        a = table[group](r)
        yield group, density, t, (-a * dt * (1 + D("0.8") * a * dt)).exp()


def rows_petrol():
    for reid, slope, t in [("60000", "3", "20"), ("90000", "3", "60"), ("60000", "2.5", "40"), ("60000", "3.5", "40"),
                           ("48263.301052178527", "2", "-10"), ("103000", "3", "0")]:
        root, log = D(slope).sqrt(), (D(reid) / PSI).log10()
        r = D("1.8") * D(t) + 32 + D("459.6")
        p = ((D("0.7553") - 413 / r) * root * log - (D("1.854") - 1042 / r) * root
             + (2416 / r - D("2.013")) * log - 8742 / r + D("15.64")).exp() * PSI
        yield reid, slope, t, p


def rows_mixing():
    for rule, to, back in [
        ("Grunberg-Nissan", lambda v: v.ln(), lambda n: n.exp()),
        ("Kendall-Monroe", lambda v: v ** (D(1) / 3), lambda n: n**3),
        ("Refutas", lambda v: D("14.534") * (v + D("0.8")).ln().ln() + D("10.975"),
         lambda n: ((n - D("10.975")) / D("14.534")).exp().exp() - D("0.8")),
    ]:
        for shares, viscosities in [("0.5 0.3 0.2", "46 100 10"), ("0.9 0.1", "0.55 1.5"), ("0.25 0.75", "0.55 130")]:
            pairs = zip(map(D, shares.split()), map(D, viscosities.split()))
            yield rule, shares, viscosities, back(sum(s * to(v) for s, v in pairs))


def rows_air():
    for density, t, p in [("840", "293.15", "101325"), ("630", "228", "60000"), ("900", "423", "101325")]:
        t_, d = D(t), D(density) / 1000
        ostwald = D("7.70") * D("0.300") * (D("0.639") * (700 - t_) / t_ * (D("3.333") * D("0.098")).ln()).exp() * (D("0.980") - d)
        yield density, t, p, ostwald, 2697 * D(p) / 1000000 * ostwald / t_


def rows_atmosphere():
    exponent = D("9.80665") * D("28.9644") / (D("8314.32") * D("0.0065"))
    for kind, altitude in [("geopotential", "-500"), ("geopotential", "2400"), ("geopotential", "11000"), ("geometric", "2400"), ("geometric", "11000")]:
        z = D(altitude)
        h = z if kind == "geopotential" else 6356766 * z / (6356766 + z)
        yield kind, altitude, 101325 * (((D("288.15") - D("0.0065") * h) / D("288.15")).ln() * exponent).exp()


write(HERE / "exact-d341.csv", "ASTM D341, section 5: Z and the line through two points, inverted", "thin to thick, inside and outside the points",
      ["t1_k", "v1_mm2_s", "t2_k", "v2_mm2_s", "t_k", "a", "b", "v_mm2_s", "why"], rows_d341())
write(HERE / "exact-volume-correction.csv", "API 2540 table 54B", "each group, each density break from both sides, no change at 15 degC",
      ["group", "density_15_c_kg_m3", "t_c", "vcf"], rows_volume())
write(HERE / "exact-petrol-vapour-pressure.csv", "AP-42 figure 7.1-14b", "motor and aviation petrol, slopes 2 to 3.5",
      ["reid_pa", "slope", "t_c", "pressure_pa"], rows_petrol())
write(HERE / "exact-mixing.csv", "the three mixing rules", "three parts, a thin pair, a very unlike pair",
      ["rule", "shares", "viscosities_mm2_s", "v_mm2_s"], rows_mixing())
write(HERE / "exact-dissolved-air.csv", "ASTM D2779", "diesel, and both corners of the method",
      ["density_15_c_kg_m3", "t_k", "pressure_pa", "ostwald", "bunsen"], rows_air())
write(HERE.parent / "atmosphere" / "exact.csv", "US Standard Atmosphere 1976, troposphere", "both ends and both altitudes",
      ["kind", "altitude_m", "pressure_pa"], rows_atmosphere())
