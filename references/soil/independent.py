"""Writes the exact-*.csv tables beside it: the published equations in 60-digit decimals.

Run: python3 independent.py. It shares no code with the library. The loading laws are the closed forms as printed, which
lose digits where a constant is small; 60 digits leave plenty. Cake-standard at constant pressure is solved by halving.
"""
from decimal import Decimal as D, getcontext
from pathlib import Path

getcontext().prec = 60
HERE = Path(__file__).parent
PI = D("3.14159265358979323846264338327950288419716939937510582097494459")


def write(path, source, covers, columns, rows):
    header = [
        "# kind: independent arithmetic (checks the code, not the physics)",
        f"# source: {source}; independent.py, Python decimal at 60 digits",
        "# status: computed",
        "# obtained: 2026-11-25",
        "# precision: 17 figures",
        f"# covers: {covers}",
        ",".join(columns),
    ]
    lines = [",".join(f"{cell:.16e}" if isinstance(cell, D) else str(cell) for cell in row) for row in rows]
    (HERE / path).write_text("\n".join(header + lines) + "\n")


def cake_standard(j0, kc, ks, t):
    # time needed = V/(1 - Ks V/2)/J0 + Kc V^2/2, rising in V
    low, high = D(0), 2 / ks
    for _ in range(220):
        v = (low + high) / 2
        low, high = (v, high) if v / (1 - ks * v / 2) / j0 + kc * v * v / 2 < t else (low, v)
    return low


def law(name, j0, kb, ki, ks, kc, t):
    s = (1 + 2 * kc * j0 * j0 * t).sqrt()
    e = (ki * j0 * t).exp()
    x = 1 - kb * t
    return {
        "complete": lambda: (j0 / kb * (1 - (-kb * t).exp()), 1 / x),
        "standard": lambda: (1 / (1 / (j0 * t) + ks / 2), 1 / (1 - ks * j0 * t / 2) ** 2),
        "intermediate": lambda: ((1 + ki * j0 * t).ln() / ki, e),
        "cake": lambda: ((s - 1) / (kc * j0), 1 + kc * j0 * j0 * t),
        "cake-complete": lambda: (
            j0 / kb * (1 - (-(kb / (kc * j0 * j0)) * (s - 1)).exp()), (1 - kc * j0 * j0 / kb * x.ln()) / x),
        "cake-intermediate": lambda: ((1 + ki / (kc * j0) * (s - 1)).ln() / ki, e * (1 + kc * j0 / ki * (e - 1))),
        "complete-standard": lambda: (
            j0 / kb * (1 - (-2 * kb * t / (2 + ks * j0 * t)).exp()), 1 / (x * (1 + ks * j0 / (2 * kb) * x.ln()) ** 2)),
        "intermediate-standard": lambda: (
            (1 + 2 * ki * j0 * t / (2 + ks * j0 * t)).ln() / ki, e / (1 - ks / (2 * ki) * (e - 1)) ** 2),
        "cake-standard": lambda: (
            cake_standard(j0, kc, ks, t), 1 / (1 - ks * j0 * t / 2) ** 2 + kc * j0 * j0 * t),
    }[name]()


NEEDS = {
    "complete": "b", "standard": "s", "intermediate": "i", "cake": "c", "cake-complete": "cb", "cake-intermediate": "ci",
    "complete-standard": "bs", "intermediate-standard": "is", "cake-standard": "cs",
}
# J0, Kb, Ki, Ks, Kc, t and why
CASES = [
    ("1e-3", "8e-4", "1.2", "0.9", "4e4", "700", "the published check set"),
    ("2e-4", "1e-4", "0.5", "0.4", "1e4", "3600", "a fuel filter's velocity for an hour"),
    ("1e-3", "1e-12", "1e-9", "0.9", "4e4", "700", "closing almost nothing"),
    ("1e-3", "8e-4", "1.2", "1e-9", "1e-5", "700", "almost no cake and no narrowing"),
    ("1e-3", "1e-9", "1e-6", "1e-6", "1e-3", "1", "a medium hardly touched"),
    ("1e-3", "1.4e-3", "3", "0.5", "100", "700", "near the end of complete blocking"),
]


def rows_laws():
    for name, letters in NEEDS.items():
        for j0, kb, ki, ks, kc, t, why in CASES:
            j0, kb, ki, ks, kc, t = map(D, (j0, kb, ki, ks, kc, t))
            if "b" in letters and "s" in letters and 1 + ks * j0 / (2 * kb) * (1 - kb * t).ln() <= 0:
                continue
            if "i" in letters and "s" in letters and 1 - ks / (2 * ki) * ((ki * j0 * t).exp() - 1) <= 0:
                continue
            filtrate, ratio = law(name, j0, kb, ki, ks, kc, t)
            given = [v if k in letters else "" for k, v in (("c", kc * j0), ("i", ki), ("s", ks), ("b", kb / j0))]
            yield (name, *given, j0, t, filtrate, ratio, why)


SIZES = [D(s) for s in "1 2 5 10 20 40 80 120".split()]
DUSTS = {
    "A2 fine": "3 11.5 33.5 52 72 89.5 99.75 100", "A3 medium": "1.5 4.75 17 42.5 67 86 99.5 100",
    "A4 coarse": "0.8 2.95 9.25 19.5 34 59 88.5 97.5",
}


def pieces(dust):
    below, sizes = [D(s) for s in DUSTS[dust].split()], list(SIZES)
    start = (sizes[0].ln() - below[0] / (below[1] - below[0]) * (sizes[1] / sizes[0]).ln()).exp()
    if below[-1] < 100:
        last = (100 - below[-1]) / (below[-1] - below[-2]) * (sizes[-1] / sizes[-2]).ln()
        sizes.append((sizes[-1].ln() + last).exp())
        below.append(D(100))
    sizes, below = [start] + sizes, [D(0)] + below
    for i in range(len(sizes) - 1):
        yield sizes[i], sizes[i + 1], (below[i + 1] - below[i]) / 100 / (sizes[i + 1] / sizes[i]).ln()


def rows_dust():
    for dust in DUSTS:
        for size in "1 2 4 6 10 14 20 30 70 100".split():
            x = D(size)
            # dV = a dln(x), a particle holds pi/6 x^3; 1 mg/L of 2650 kg/m3, sizes in um
            per_um3 = sum(a * (max(x, low) ** -3 - high ** -3) / 3 for low, high, a in pieces(dust) if high > x)
            yield dust, size, per_um3 / (PI / 6) * D("1e-3") / 2650 * D("1e18") * D("1e-6")


def rows_sauter():
    for dust in DUSTS:
        parts = list(pieces(dust))
        volume = sum(a * (high / low).ln() for low, high, a in parts)
        yield dust, volume / sum(a * (1 / low - 1 / high) for low, high, a in parts)


write("exact-loading.csv", "Hermia (1982) and Bolton and others (2006), closed forms",
      "nine laws: usual constants, constants next to nothing, near the end; constants per m of filtrate",
      ["law", "cake", "intermediate", "standard", "complete", "velocity_m_s", "time_s", "filtrate_m", "ratio", "why"], rows_laws())
write("exact-dust.csv", "ISO 12103-1:1997, middle of the limits, volume straight over log size, outer slopes to 0 and 100 %",
      "particles per mL at 1 mg/L, three dusts, whole range of sizes", ["dust", "size_um", "per_ml"], rows_dust())
write("exact-sauter.csv", "ISO 12103-1:1997, middle of the limits, outer slopes to 0 and 100 %", "three dusts",
      ["dust", "sauter_um"], rows_sauter())
