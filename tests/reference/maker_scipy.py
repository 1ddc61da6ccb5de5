"""Scatter, levers and seek for a ball whose every part is a sphere, from closed forms.

    python maker_scipy.py            writes maker_scipy.json

A sphere's mass and moments are in every handbook (2/5 m R², parallel axes), so
nothing of this needs our way of weighing. Spread: scipy's scrambled Sobol points
through these forms, and scipy.stats.sobol_indices for what costs most. Levers:
scipy.differentiate. Seek: scipy.optimize.least_squares on the same four unknowns,
from several starts.
"""

import json
import math
from importlib.metadata import version
from pathlib import Path

import numpy as np
from scipy import differentiate, optimize, stats
from scipy.stats import qmc

HERE = Path(__file__).parent
IN, LB, OZ, G_CC = 0.0254, 0.45359237, 0.45359237 / 16, 1000.0

BALL = json.loads((HERE / "maker/spheres.ball.json").read_text())
TOLERANCES = json.loads((HERE / "maker/spheres.tolerances.json").read_text())
TARGET = json.loads((HERE / "maker/spheres.target.json").read_text())
NUMBERS = ("weight_lb", "low_rg_in", "middle_rg_in", "high_rg_in", "differential_in",
           "intermediate_differential_in", "top_weight_oz", "pin_to_cg_in")
#: What the sensitivities are of.
OUTPUTS = ("weight_lb", "low_rg_in", "differential_in", "top_weight_oz")


def numbers(diameter, cover, density, size, at):
    """Any number of balls at once: (n,), (n,), (n, pieces), (n, pieces), (n, pieces, 3), in inches and g/cc.

    The outer core displaces cover, the weights displace outer core.
    """
    radius = 0.5 * diameter * IN
    over = np.concatenate([(density[:, 0] - cover)[:, None], density[:, 1:] - density[:, :1]], axis=1)
    rs = 0.5 * size * IN
    mass = np.concatenate([(cover * radius**3)[:, None], over * rs**3], axis=1) * G_CC * 4 / 3 * math.pi
    rs = np.concatenate([radius[:, None], rs], axis=1)
    centre = np.concatenate([np.zeros((len(mass), 1, 3)), at * IN], axis=1)
    total = mass.sum(axis=1)
    cg = (mass[:, :, None] * centre).sum(axis=1) / total[:, None]
    arm = centre - cg[:, None, :]
    own = (0.4 * mass * rs**2 + mass * (arm**2).sum(axis=2)).sum(axis=1)
    tensor = own[:, None, None] * np.eye(3) - np.einsum("np,npi,npj->nij", mass, arm, arm)
    rg = np.sqrt(np.linalg.eigvalsh(tensor) / total[:, None]) / IN
    to_cg = np.arctan2(np.hypot(cg[:, 0], cg[:, 1]), cg[:, 2]) * radius / IN
    top = total * cg[:, 2] / radius / OZ
    low, middle, high = rg.T
    return dict(zip(NUMBERS, (total / LB, low, middle, high, high - low, high - middle, top, to_cg)))


def tolerances():
    """Every tolerance: its place in the file, and what it does to a ball, by steps of the tolerance."""
    names = [piece["name"] for piece in BALL["pieces"]]
    own = {item["piece"]: (n, item) for n, item in enumerate(TOLERANCES["pieces"])}
    cover = TOLERANCES["cover"]
    yield "cover.density_percent", "cover", None, cover["density_percent"] / 100
    yield "cover.diameter_in", "diameter", None, cover["diameter_in"]
    for axis, by in enumerate(cover["core_shift_in"]):
        yield f"cover.core_shift_in[{axis}]", "shift", axis, by
    for n, name in enumerate(names):
        at, item = own.get(name, (None, TOLERANCES["every_piece"]))
        yield (n, "density_percent"), "density", n, item["density_percent"] / 100
        yield (n, "size_percent"), "size", n, item["size_percent"] / 100
        for axis, by in enumerate(item["at_in"]):
            yield (n, f"at_in[{axis}]"), "at", (n, axis), by


SOURCES = list(tolerances())


def strayed(off):
    """The numbers of balls with these deviations, (n, tolerances) in parts of the tolerance."""
    count = len(off)
    diameter = np.full(count, BALL["diameter_in"])
    cover = np.full(count, BALL["cover"]["density_g_cc"])
    pieces = BALL["pieces"]
    density = np.tile([piece["density_g_cc"] for piece in pieces], (count, 1))
    size = np.tile([piece["shape"]["diameter_in"] for piece in pieces], (count, 1))
    at = np.tile([piece.get("at_in", [0, 0, 0]) for piece in pieces], (count, 1, 1)).astype(float)
    for k, (_, what, which, within) in enumerate(SOURCES):
        by = within * off[:, k]
        match what:
            case "cover":
                cover = cover * (1 + by)
            case "diameter":
                diameter = diameter + by
            case "shift":
                at[:, :, which] += by[:, None]
            case "density":
                density[:, which] *= 1 + by
            case "size":
                size[:, which] *= 1 + by
            case "at":
                at[:, which[0], which[1]] += by
    return numbers(diameter, cover, density, size, at)


def passing(got, own):
    accept = TOLERANCES["accept"]
    good = np.ones(len(got["weight_lb"]), dtype=bool)
    for key in ("weight_lb", "top_weight_oz"):
        good &= (got[key] >= accept[key]["at_least"]) & (got[key] <= accept[key]["at_most"])
    good &= abs(got["low_rg_in"] - own["low_rg_in"]) <= accept["rg_within_in"]
    good &= abs(got["differential_in"] - own["differential_in"]) <= accept["differential_within_in"]
    return good


def spread():
    own = {key: value[0] for key, value in strayed(np.zeros((1, len(SOURCES)))).items()}
    points = qmc.Sobol(len(SOURCES), seed=1).random_base2(20)
    got = strayed(2 * points - 1)
    out = {"nominal": own, "passed": passing(got, own).mean(), "numbers": {}}
    for key, values in got.items():
        quantiles = np.quantile(values, [0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99])
        out["numbers"][key] = {
            "mean": values.mean(), "deviation": values.std(ddof=1), "quantiles": quantiles.tolist()}
    found = stats.sobol_indices(
        func=lambda x: np.stack([strayed(x.T)[key] for key in OUTPUTS]),
        n=2**15,
        dists=[stats.uniform(-1, 2)] * len(SOURCES),
        rng=2,
    )
    out["costs"] = [
        {
            "of": list(place) if isinstance(place, tuple) else place,
            "first": dict(zip(OUTPUTS, found.first_order[:, k].tolist())),
            "total": dict(zip(OUTPUTS, found.total_order[:, k].tolist())),
        }
        for k, (place, *_) in enumerate(SOURCES)
    ]
    return out


def levers():
    """What each number moves by per unit of a control."""
    pieces = BALL["pieces"]
    out = []
    for n, piece in enumerate(pieces):
        for what, value in (("density_g_cc", piece["density_g_cc"]), ("shape.diameter_in", piece["shape"]["diameter_in"]),
                            ("at_in[2]", piece.get("at_in", [0, 0, 0])[2])):
            def ball(x, key):
                count = np.size(x)
                density = np.tile([p["density_g_cc"] for p in pieces], (count, 1))
                size = np.tile([p["shape"]["diameter_in"] for p in pieces], (count, 1))
                at = np.tile([p.get("at_in", [0, 0, 0]) for p in pieces], (count, 1, 1)).astype(float)
                flat = np.ravel(x)
                if what == "density_g_cc":
                    density[:, n] = flat
                elif what == "shape.diameter_in":
                    size[:, n] = flat
                else:
                    at[:, n, 2] = flat
                got = numbers(np.full(count, BALL["diameter_in"]), np.full(count, BALL["cover"]["density_g_cc"]),
                              density, size, at)
                return got[key].reshape(np.shape(x))

            moved = {}
            for key in OUTPUTS:
                one = differentiate.derivative(lambda x, key=key: ball(x, key), np.array([float(value)]), initial_step=0.05, order=8)
                moved[key] = float(np.squeeze(one.df))
            out.append({"control": f"pieces[{n}].{what}", "value": value, "per_unit": moved})
    return out


def seek():
    """Every core that meets the target, from many starts."""
    pieces = BALL["pieces"]
    want = TARGET["want"]
    low = np.array([free["from"] for free in TARGET["free"]])
    high = np.array([free["to"] for free in TARGET["free"]])

    def miss(x):
        density = np.array([[p["density_g_cc"] for p in pieces]])
        density[0, :2] = x[:2]
        size = np.array([[p["shape"]["diameter_in"] for p in pieces]])
        at = np.array([[p.get("at_in", [0, 0, 0]) for p in pieces]], dtype=float)
        at[0, 1, 2], at[0, 2, 2] = x[2], x[3]
        got = numbers(np.array([BALL["diameter_in"]]), np.array([BALL["cover"]["density_g_cc"]]), density, size, at)
        return np.array([
            (got["weight_lb"][0] - want["weight_lb"]) / 0.02,
            (got["low_rg_in"][0] - want["rg_in"]) / 0.001,
            (got["differential_in"][0] - want["differential_in"]) / 0.001,
            (got["top_weight_oz"][0] - want["top_weight_oz"]) / 0.05,
        ])

    found = []
    for start in qmc.Sobol(4, seed=3).random_base2(5):
        one = optimize.least_squares(miss, low + start * (high - low), bounds=(low, high), xtol=1e-14, ftol=1e-14, gtol=1e-14)
        if np.abs(one.fun).max() < 1e-6 and not any(np.abs(one.x - x).max() < 1e-4 for x in found):
            found.append(one.x)
    return [x.tolist() for x in found]


def main():
    made = {"with": {name: version(name) for name in ("numpy", "scipy")},
            "scatter": spread(), "levers": levers(), "seek": seek()}
    (HERE / "maker_scipy.json").write_text(json.dumps(made, indent=1) + "\n")


main()
