"""Measures the covers of the balls in balls/ with mesh booleans and a point rule.

    python cover_trimesh.py            writes cover_trimesh.json

manifold3d joins the pieces (each less its cuts). Less the cones from the centre
to the holes' openings, its farthest vertex gives the thinnest place; with the holes
taken out, its gap to a hole's mesh and the
gap between two holes' meshes the walls. Each is measured at two facet sizes, and
what the finer one moved is the uncertainty recorded, with the facets' own.

The mean is taken by the material rule alone, at points along radii: the first
point on the way in that a piece holds, then halved to a millionth of an inch.
"""

import json
import math
import sys
from importlib.metadata import version
from pathlib import Path

import manifold3d
import numpy as np

from ball_recipe import IN, Ball
from weigh_trimesh import HERE, arc, hole_body, inside, manifold, revolve, solid_body, spread

CHORDS = (256, 512)
ROWS, COLUMNS, STEPS = 48, 96, 500


def sphere(radius, n):
    return manifold(*revolve(arc(radius, n, -math.pi / 2, math.pi / 2), n))


def openings(hole, radius, n):
    """Cones from the ball's centre over all places of the surface that a hole takes."""
    u = np.cross(hole.outward, [1, 0, 0] if abs(hole.outward[0]) < 0.6 else [0, 1, 0])
    u /= np.linalg.norm(u)
    v = np.cross(hole.outward, u)
    phi = np.arange(n) * (2 * math.pi / n)
    wall = hole.bottom + hole.radius * (np.outer(np.cos(phi), u) + np.outer(np.sin(phi), v))
    b = wall @ hole.outward
    root = np.sqrt(b * b - np.einsum("ij,ij->i", wall, wall) + radius * radius)
    cones = []
    for t in (-b + root, -b - root):
        # A bottom inside the ball takes nothing on the far side.
        if (t > 0).all():
            rim = wall + np.outer(t, hole.outward)
            apart = 1.5 / (rim @ rim.mean(axis=0)).min() * np.linalg.norm(rim.mean(axis=0)) * radius
            cones.append(manifold3d.Manifold.hull_points(np.vstack([np.zeros(3), rim * apart])))
        else:
            assert (t <= 0).all(), "a bottom that cuts the surface"
    return cones


def measured(ball, n):
    whole = sphere(ball.radius, n)
    core = manifold3d.Manifold()
    for solid, cuts in ball.pieces:
        body = solid_body(solid, n)
        for cut in cuts:
            body = body - solid_body(cut, n)
        core = core + body
    holes = [hole_body(hole, ball.radius, n) for hole in ball.holes]
    undrilled = core
    for hole in ball.holes:
        for cone in openings(hole, ball.radius, n):
            core = core - cone
    far = 0.0
    if not core.is_empty():
        far = float(np.linalg.norm(np.asarray(core.to_mesh64().vert_properties)[:, :3], axis=1).max())
    reach = 2 * ball.radius
    walls = []
    for k, hole in enumerate(holes):
        rest = undrilled
        for j, other in enumerate(holes):
            if j != k:
                rest = rest - other
        walls.append(None if rest.is_empty() else float(rest.min_gap(hole, reach)))
    inner = [hole ^ whole for hole in holes]
    webs = [
        [a, b, float(inner[a].min_gap(inner[b], reach))] for a in range(len(holes)) for b in range(a + 1, len(holes))
    ]
    return far, walls, webs


def core_at(ball, points):
    """Whether a piece holds each point."""
    core = np.zeros(len(points), dtype=bool)
    for solid, cuts in ball.pieces:
        held = inside(solid, points)
        for cut in cuts:
            held &= ~inside(cut, points)
        core |= held
    return core


def mean(ball):
    """Mean thickness along the radius where no hole takes the surface, and its share under an inch."""
    z, weight = np.polynomial.legendre.leggauss(ROWS)
    phi = (np.arange(COLUMNS) + 0.5) * (2 * math.pi / COLUMNS)
    r = np.sqrt(1 - z * z)
    n = np.stack(
        [np.outer(r, np.cos(phi)).ravel(), np.outer(r, np.sin(phi)).ravel(), np.repeat(z, COLUMNS)], axis=1
    )
    weight = np.repeat(weight, COLUMNS)
    nearly = ball.radius * (1 - 1e-9)
    last = np.full(len(n), nearly)
    going = ~core_at(ball, n * nearly)
    air = np.zeros(len(n), dtype=bool)
    for hole in ball.holes:
        along = (n * nearly - hole.bottom) @ hole.outward
        across = np.linalg.norm(n * nearly - hole.bottom - np.outer(along, hole.outward), axis=1)
        air |= (along > 0) & (across < hole.radius)
    ended = np.full(len(n), nearly)
    for k in range(1, STEPS + 1):
        at = nearly * (1 - k / STEPS)
        cover = ~core_at(ball, n * at)
        ended = np.where(going & ~cover, at, ended)
        last = np.where(going & cover, at, last)
        going &= cover
    outer, inner = last.copy(), np.where(going, last, ended)
    for _ in range(22):
        middle = (outer + inner) / 2
        cover = ~core_at(ball, n * middle[:, None])
        outer, inner = np.where(cover, middle, outer), np.where(cover, inner, middle)
    thickness = np.where(going, ball.radius, ball.radius - outer)
    weight = weight[~air] / weight[~air].sum()
    thickness = thickness[~air]
    return float(weight @ thickness), float(weight @ (thickness < IN))


def main():
    results = []
    for path in sorted((HERE / "balls").glob("*.json")):
        ball = Ball(path)
        (far0, walls0, webs0), (far, walls, webs) = (measured(ball, n) for n in CHORDS)
        # A drawn circle lies between (1 ± its growth) of the true one, twice over.
        facet = 2 * (spread(CHORDS[-1]) - 1) * ball.radius + ball.radius * (1 - math.cos(math.pi / CHORDS[-1]))
        moved = lambda old, new: 2 * abs(new - old) + facet
        mean_m, under = mean(ball)
        results.append({
            "file": f"balls/{path.name}",
            "thinnest_m": ball.radius - far,
            "thinnest_uncertainty_m": moved(far0, far),
            "mean_m": mean_m,
            "under_an_inch_share": under,
            "to_core_m": walls,
            "to_core_uncertainty_m": [None if a is None or b is None else moved(a, b) for a, b in zip(walls0, walls)],
            "webs": [
                {"holes": [a, b], "least_m": least, "uncertainty_m": moved(old, least)}
                for (_, _, old), (a, b, least) in zip(webs0, webs)
            ],
        })
        print(path.name, results[-1])
    versions = {name: version(name) for name in ("manifold3d", "numpy", "trimesh")}
    out = {"made_by": "cover_trimesh.py", "versions": {"python": sys.version.split()[0], **versions}, "balls": results}
    Path(HERE / "cover_trimesh.json").write_text(json.dumps(out, indent=1) + "\n")


if __name__ == "__main__":
    main()
