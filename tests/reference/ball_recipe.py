"""Reads ball files as the format describes them: plain numbers in metres, nothing shared with the Rust code."""

import json
import math
from pathlib import Path

import numpy as np

IN = 0.0254


def turn_matrix(turn_deg):
    """Turn by a about x, then b about y, then c about z (fixed axes)."""
    a, b, c = (math.radians(t) for t in turn_deg)
    x = np.array([[1, 0, 0], [0, math.cos(a), -math.sin(a)], [0, math.sin(a), math.cos(a)]])
    y = np.array([[math.cos(b), 0, math.sin(b)], [0, 1, 0], [-math.sin(b), 0, math.cos(b)]])
    z = np.array([[math.cos(c), -math.sin(c), 0], [math.sin(c), math.cos(c), 0], [0, 0, 1]])
    return z @ y @ x


class Solid:
    """A shape, its squash, and the affine map x -> turn @ x + at that places it in the ball."""

    def __init__(self, spec, parent=None):
        self.shape = {k: v for k, v in spec["shape"].items() if k != "squash"}
        self.squash = spec["shape"].get("squash", [1.0, 1.0])
        self.turn = turn_matrix(spec.get("turn_deg", [0, 0, 0]))
        self.at = np.array(spec.get("at_in", [0, 0, 0]), dtype=float) * IN
        if parent is not None:
            self.at = parent.turn @ self.at + parent.at
            self.turn = parent.turn @ self.turn


class Hole:
    """A flat-bottomed cylinder: everything outward of the bottom and within the radius is gone."""

    def __init__(self, spec, radius):
        entry = np.array(spec["entry"], dtype=float)
        entry /= np.linalg.norm(entry)
        axis = np.array(spec.get("axis", -entry), dtype=float)
        self.outward = -axis / np.linalg.norm(axis)
        self.bottom = radius * entry - spec["depth_in"] * IN * self.outward
        self.radius = spec["diameter_in"] * IN / 2


class Ball:
    def __init__(self, path):
        spec = json.loads(Path(path).read_text())
        self.name = spec["name"]
        self.radius = spec["diameter_in"] * IN / 2
        self.densities = [spec["cover"]["density_g_cc"] * 1e3]
        self.pieces = []
        for piece in spec.get("pieces", []):
            body = Solid(piece)
            self.pieces.append((body, [Solid(cut, body) for cut in piece.get("cuts", [])]))
            self.densities.append(piece["density_g_cc"] * 1e3)
        self.holes = [Hole(h, self.radius) for h in spec.get("holes", [])]


def combine(densities, parts):
    """Mass, centre of gravity and tensor about it, from each part's
    (volume, centroid, volume tensor about the centroid)."""
    mass = sum(d * p[0] for d, p in zip(densities, parts))
    cg = sum(d * p[0] * p[1] for d, p in zip(densities, parts)) / mass
    tensor = np.zeros((3, 3))
    for d, (volume, centroid, about_centroid) in zip(densities, parts):
        s = centroid - cg
        tensor += d * (about_centroid + volume * (s @ s * np.eye(3) - np.outer(s, s)))
    return mass, cg, tensor
