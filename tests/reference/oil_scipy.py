"""Rolls ten balls on oil with scipy: film, friction law and motion set up apart from Pithball's code.

    python oil_scipy.py               writes oil_scipy.json

The film is a tensor B-spline of scipy's own (NdBSpline) over the cells of the
oil file and their mirror images; a pattern's cells are its written profiles
integrated by scipy's quadrature; the motion is that of roll_scipy.py.
"""

import json
import math
import platform
from pathlib import Path

import numpy as np
import scipy
from scipy.integrate import quad
from scipy.interpolate import BSpline, NdBSpline

import roll_scipy as motion
from roll_scipy import BOARD, FT, IN

HERE = Path(__file__).parent
UM = 1e-6
BOARDS, ROWS = 39, 63


def smooth(t):
    t = min(max(t, 0.0), 1.0)
    return t**3 * (10 - 15 * t + 6 * t * t)


def pattern_cells(p):
    """Film laid on each cell, in metres, from the statement of a pattern in the oil file's schema."""
    def across(board):
        edge = min(board, 40 - board)
        thin = 1 / p["ratio"]
        return thin + (1 - thin) * smooth((edge - p["thin_to_board"]) / (p["full_from_board"] - p["thin_to_board"]))

    fade = p["length_ft"] - p["buff_ft"]

    def down(ft):
        if ft <= p["front_ft"]:
            return 1.0
        if ft <= fade:
            return 1 - (1 - p["end_share"]) * smooth((ft - p["front_ft"]) / (fade - p["front_ft"]))
        if ft < p["length_ft"]:
            return p["end_share"] * (1 - smooth((ft - fade) / p["buff_ft"]))
        return 0.0

    breaks = [p["front_ft"], fade, p["length_ft"]]

    def mean(row):
        ends = [row, *[b for b in breaks if row < b < row + 1], row + 1]
        return sum(quad(down, a, b, epsabs=1e-14)[0] for a, b in zip(ends, ends[1:]))

    cells = np.array([[across(b) * d for b in range(1, BOARDS + 1)] for d in [mean(r) for r in range(ROWS)]])
    return cells * (p["volume_ml"] * 1e-6 / (cells.sum() * BOARD * FT))


def lopsided_cells():
    """An uneven lane: streaks, a dry spot, more oil on one side. In hundredths of a micrometre, so that JSON holds it exactly."""
    cells = np.zeros((ROWS, BOARDS))
    for row in range(44):
        for board in range(1, BOARDS + 1):
            film = 4 * math.exp(-(((board - 23) / 9) ** 2)) * (1 - row / 55) + 0.3
            film *= 1 + 0.35 * math.sin(board * 1.3 + row * 0.4)
            film *= 1 - 0.8 * math.exp(-(((board - 12) / 3) ** 2) - ((row - 25) / 6) ** 2)
            cells[row, board - 1] = max(film, 0) * min(1, (44 - row) / 5)
    return np.round(cells, 2) * UM


class Oiled:
    def __init__(self, cells, law):
        pad = np.pad(cells, 3, mode="symmetric")
        # Control i of the padded list stands at i - 3 + 1 boards, j - 3 + 0.5 feet.
        knots = lambda n, first: first - 2 + np.arange(n + 4)
        self.film = NdBSpline((knots(pad.shape[0], -2.5), knots(pad.shape[1], -2.0)), pad, 3)
        self.law = law

    def film_m(self, x, y):
        board = min(max(20 - x / BOARD, 0.5), 39.5)
        ft = min(max(y / FT, 0.0), 63.0)
        return float(self.film([[ft, board]])[0])

    def mu(self, x, y):
        half = self.law["film_half_um"] * UM
        lam = (math.sqrt(2) - 1) * self.film_m(x, y) / half
        return self.law["mu_oil"] + (self.law["mu_dry"] - self.law["mu_oil"]) / (1 + lam) ** 2


def check_film():
    """The spline keeps a constant, and its volume is the cells'."""
    even = Oiled(np.full((ROWS, BOARDS), 2 * UM), {"film_half_um": 1, "mu_oil": 0, "mu_dry": 0})
    assert abs(even.film_m(0.3, 5.0) - 2 * UM) < 1e-18 and abs(even.film_m(-0.527, 0.0) - 2 * UM) < 1e-18
    hat = BSpline.basis_element(np.arange(5) - 2.0)
    one = np.zeros((ROWS, BOARDS))
    one[10, 6] = UM
    at = Oiled(one, even.law).film_m((20 - 7.3) * BOARD, 11.1 * FT)
    assert abs(at - UM * hat(0.3) * hat(0.6)) < 1e-20


NEUTRAL = {"mu_oil": 0.04, "mu_dry": 0.2, "film_half_um": 0.3}
SLICK = {"mu_oil": 0.03, "mu_dry": 0.16, "film_half_um": 0.5}
ROUGH = {"mu_oil": 0.06, "mu_dry": 0.25, "film_half_um": 0.8}


def pattern(length, volume, ratio, thin, full, front, end, buff):
    return {"length_ft": length, "volume_ml": volume, "ratio": ratio, "thin_to_board": thin, "full_from_board": full,
            "front_ft": front, "end_share": end, "buff_ft": buff}


HOUSE = pattern(40, 24, 10, 8, 12, 8, 0.3, 3)
FLAT = pattern(41, 25, 2, 7, 16, 6, 0.35, 3)
STEP = pattern(40, 24, 40, 9, 11, 10, 0.45, 2)
LONG = pattern(47.5, 26, 3, 7, 14, 8, 0.4, 3.5)


def shot(oil, law, name, *args):
    return {**motion.shot(name, *args), "oil": oil, "law": law, "zones": [{"from_ft": 0, "to_ft": 63, "mu": 0}]}


SHOTS = [
    shot(HOUSE, NEUTRAL, "house, symmetric core", motion.SYMMETRIC, "right", 17.5, 300, 55, 12, 3.3, 24, 4.5, 50),
    shot(HOUSE, NEUTRAL, "house, sent out too far", motion.ASYMMETRIC, "right", 18, 275, 50, 12, 4.2, 23, 4.5, 50),
    shot(HOUSE, NEUTRAL, "house, left-handed", motion.ASYMMETRIC, "left", 17, 320, 45, 14, -3.0, 25, 4, 60, 30),
    shot(STEP, NEUTRAL, "along the step of a wet-dry pattern", motion.SYMMETRIC, "right", 18.5, 240, 30, 14, 2.04, 20, 4, 60),
    shot(LONG, ROUGH, "long, rough ball", motion.ASYMMETRIC, "right", 17.5, 310, 55, 12, 4.2, 24, 3.5, 45),
    shot(FLAT, SLICK, "flat, slick ball, no spin", motion.UNIFORM, "right", 15, 0, 0, 0, 0.3, 18, 3, 20),
    shot(FLAT, NEUTRAL, "flat, upright axis", motion.ASYMMETRIC, "left", 16, 200, 0, 90, -0.5, 20, 3, 70),
    shot("lopsided", NEUTRAL, "lopsided map", motion.SYMMETRIC, "right", 17, 300, 45, 12, 2.5, 22, 3.375),
    shot("lopsided", NEUTRAL, "lopsided map, left-handed", motion.ASYMMETRIC, "left", 16.5, 350, 40, 10, -2.5, 22, 4, 60),
    shot("lopsided", ROUGH, "lopsided map, strong top weight", motion.STRONG, "right", 15, 220, 25, 5, 2.0, 18, 2.5, 30, 200),
]


def main():
    check_film()
    lopsided = lopsided_cells()
    out = []
    for s in SHOTS:
        cells = lopsided if s["oil"] == "lopsided" else pattern_cells(s["oil"])
        lane = Oiled(cells, s["law"])
        result, kinds, steps = motion.roll(s, lane.mu)
        print(s["name"], kinds, steps)
        print("   ", {k: (round(v, 5) if isinstance(v, float) else v) for k, v in result.items()}, flush=True)
        del s["zones"]
        out.append({**s, "result": result})
    made_with = {"python": platform.python_version(), "scipy": scipy.__version__, "numpy": np.__version__}
    rows = [[round(cell / UM, 2) for cell in row] for row in lopsided]
    text = json.dumps({"made_with": made_with, "lopsided_um": "ROWS", "shots": out}, indent=1)
    text = text.replace('"ROWS"', "[\n  " + ",\n  ".join(json.dumps(row) for row in rows) + "\n ]")
    (HERE / "oil_scipy.json").write_text(text + "\n")


if __name__ == "__main__":
    main()
