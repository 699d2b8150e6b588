"""Works out again every table whose header says "evaluated", by its stated form and without the library.

    python3 references/evaluate.py
"""
import csv
from math import exp, log10, sqrt
from pathlib import Path

HERE = Path(__file__).parent


def rows(name):
    with open(HERE / f"{name}.csv") as file:
        return [row for row in csv.DictReader(line for line in file if not line.startswith("#"))]


def superpipe(reynolds):
    """1/sqrt(f) = 1.930 log10(Re sqrt(f)) - 0.537, by halving."""
    low, high = 1e-3, 1.0
    for _ in range(200):
        middle = (low + high) / 2
        if 1 / sqrt(middle) > 1.930 * log10(reynolds * sqrt(middle)) - 0.537:
            low = middle
        else:
            high = middle
    return low


def open_area(row):
    aperture, wire = float(row["aperture_um"]), float(row["wire_um"])
    return (aperture / (aperture + wire)) ** 2


def wieghardt(row):
    b = open_area(row)
    return 6 * (1 - b) / b**2 * float(row["reynolds"]) ** (-1 / 3)


def idelchik(row):
    b = open_area(row)
    return 1.3 * (1 - b) + (1 / b - 1) ** 2


def antoine(row):
    """Ambrose and Sprake, kPa."""
    return 100 * 10 ** (5.24677 - 1598.673 / (float(row["t_c"]) + 273.15 - 46.424))


def cragoe(row):
    return (0.388 + 0.00045 * float(row["t_f"])) / sqrt(float(row["specific_gravity"]))


def creeping(row):
    return {"elbow 90 screwed": 842, "ball or gate full bore": 910}[row["fitting"]] / float(row["reynolds"])


TABLES = {
    "lines/blasius": ("friction_factor", lambda row: 0.3164 / float(row["reynolds"]) ** 0.25),
    "lines/superpipe": ("friction_factor", lambda row: superpipe(float(row["reynolds"]))),
    "screens/wieghardt": ("k", wieghardt),
    "screens/idelchik": ("k", idelchik),
    "fuels/ethanol-vapour-pressure": ("pressure_kpa", antoine),
    "fuels/specific-heat-fahrenheit": ("btu_lb_f", cragoe),
    "fittings/creeping": ("k", creeping),
    "soil/washout": ("left", lambda row: exp(-float(row["turnovers"]))),
}


def half_step(text):
    return 0.5 * 10.0 ** -len(text.partition(".")[2])


def main():
    for name, (column, form) in TABLES.items():
        found = rows(name)
        wrong = [row for row in found if abs(form(row) - float(row[column])) > half_step(row[column]) * (1 + 1e-9)]
        print(name, len(found), "rows agree as printed" if not wrong else wrong)


if __name__ == "__main__":
    main()
