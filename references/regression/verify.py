"""Recomputes every certified value with 50 digits: Newton's method on the gradient, started at the certified parameters.

    python3 references/regression/verify.py
"""
import csv
from pathlib import Path

from mpmath import exp, lu_solve, inverse, matrix, mp, mpf, sqrt

mp.dps = 50
HERE = Path(__file__).parent


def rows(name):
    with open(HERE / f"{name}.csv") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


def thurber(b, x):
    return (b[0] + b[1] * x + b[2] * x**2 + b[3] * x**3) / (1 + b[4] * x + b[5] * x**2 + b[6] * x**3)


MODELS = {
    "misra1a": lambda b, x: b[0] * (1 - exp(-b[1] * x)),
    "misra1b": lambda b, x: b[0] * (1 - (1 + b[1] * x / 2) ** -2),
    "danwood": lambda b, x: b[0] * x ** b[1],
    "boxbod": lambda b, x: b[0] * (1 - exp(-b[1] * x)),
    "mgh09": lambda b, x: b[0] * (x**2 + x * b[1]) / (x**2 + x * b[2] + b[3]),
    "mgh17": lambda b, x: b[0] + b[1] * exp(-x * b[3]) + b[2] * exp(-x * b[4]),
    "thurber": thurber,
    "chwirut2": lambda b, x: exp(-b[0] * x) / (b[1] + b[2] * x),
    "misra1c": lambda b, x: b[0] * (1 - (1 + 2 * b[1] * x) ** mpf("-0.5")),
    "misra1d": lambda b, x: b[0] * b[1] * x / (1 + b[1] * x),
    "rat42": lambda b, x: b[0] / (1 + exp(b[1] - b[2] * x)),
    "rat43": lambda b, x: b[0] / (1 + exp(b[1] - b[2] * x)) ** (1 / b[3]),
    "mgh10": lambda b, x: b[0] * exp(b[1] / (x + b[2])),
    "norris": lambda b, x: b[0] + b[1] * x,
}


def jacobian(model, b, xs):
    columns = []
    for at in range(len(b)):
        step = abs(b[at]) * mpf(10) ** -20
        up = [*b[:at], b[at] + step, *b[at + 1 :]]
        down = [*b[:at], b[at] - step, *b[at + 1 :]]
        columns.append([(model(up, x) - model(down, x)) / (2 * step) for x in xs])
    return matrix([[column[row] for column in columns] for row in range(len(xs))])


def best(model, start, xs, ys):
    """Gauss-Newton from where the minimum is said to be, until nothing moves in 30 digits."""
    b = list(start)
    for _ in range(200):
        slopes = jacobian(model, b, xs)
        missed = matrix([y - model(b, x) for x, y in zip(xs, ys)])
        move = lu_solve(slopes.T * slopes, slopes.T * missed)
        b = [value + move[at] for at, value in enumerate(b)]
        if max(abs(move[at] / b[at]) for at in range(len(b))) < mpf(10) ** -30:
            break
    total = sum((y - model(b, x)) ** 2 for x, y in zip(xs, ys))
    spread = inverse(slopes.T * slopes) * (total / (len(xs) - len(b)))
    return b, [sqrt(spread[at, at]) for at in range(len(b))], total


def figures(value, count=11):
    return mp.nstr(value, count) if value else "0"


def main():
    certified = rows("certified") + rows("certified-linear")
    for problem in dict.fromkeys(row["problem"] for row in certified):
        own = [row for row in certified if row["problem"] == problem]
        data = rows("misra1a" if problem.startswith("misra1") else problem)
        xs, ys = [mpf(row["x"]) for row in data], [mpf(row["y"]) for row in data]
        found, deviations, total = best(MODELS[problem], [mpf(row["certified"]) for row in own], xs, ys)
        wrong = []
        for row, value, deviation in zip(own, found, deviations):
            for name, got in (("certified", value), ("deviation", deviation), ("sum", total)):
                if mpf(figures(got, 15 if problem == "norris" else 11)) != mpf(row[name]):
                    wrong.append(f"{row['parameter']} {name}: stated {row[name]}, recomputed {mp.nstr(got, 13)}")
        print(problem, "agrees in every digit" if not wrong else wrong)


if __name__ == "__main__":
    main()
