"""Weighs the balls in balls/ with mesh booleans: manifold3d cuts, trimesh measures.

    python weigh_trimesh.py            writes weigh_trimesh.json

A circle of n chords is drawn slightly large, so that its area is exact, and so
is every arc of a sphere or tube: facets then lie as much outside the true
surface as inside it, and the meshes converge far faster than the usual square
of the facet size. Each ball is weighed at three facet sizes. The finest counts;
the larger of its distance to the middle one and half the middle one's distance
to the coarse one is the uncertainty recorded.

As a check that shares no booleans, point_check samples the material rule at
jittered grid points and must agree within five standard deviations.
"""

import json
import math
import platform
import sys
from importlib.metadata import version
from pathlib import Path

import manifold3d
import numpy as np
import trimesh

from ball_recipe import IN, Ball, combine

HERE = Path(__file__).parent
CHORDS = (128, 256, 512)


def spread(n):
    """By how much a regular n-gon of a circle must grow to have the circle's area."""
    step = 2 * math.pi / n
    return math.sqrt(step / math.sin(step))


def manifold(vertices, faces):
    mesh = manifold3d.Mesh64(
        vert_properties=np.ascontiguousarray(vertices, dtype=np.float64),
        tri_verts=np.ascontiguousarray(faces, dtype=np.uint64),
    )
    body = manifold3d.Manifold(mesh)
    if body.status() != manifold3d.Error.NoError:
        raise ValueError(f"not a closed mesh: {body.status()}")
    return body


def revolve(profile, n):
    """A closed polygon in (r, z), counter-clockwise, revolved about z in n chords."""
    area = sum(r0 * z1 - r1 * z0 for (r0, z0), (r1, z1) in zip(profile, profile[1:] + profile[:1]))
    if area < 0:
        profile = profile[::-1]
    angle = np.arange(n) * (2 * math.pi / n)
    circle = np.stack([np.cos(angle), np.sin(angle)], axis=1) * spread(n)
    vertices, rows = [], []
    for r, z in profile:
        if r == 0:
            rows.append(np.full(n, len(vertices)))
            vertices.append((0.0, 0.0, z))
        else:
            rows.append(np.arange(n) + len(vertices))
            vertices.extend((r * x, r * y, z) for x, y in circle)
    faces = []
    for low, high in zip(rows, rows[1:] + rows[:1]):
        a, b = low, np.roll(low, -1)
        c, d = high, np.roll(high, -1)
        if low[0] != low[1]:
            faces.append(np.stack([a, b, d], axis=1))
        if high[0] != high[1]:
            faces.append(np.stack([a, d, c], axis=1))
    return np.array(vertices), np.concatenate(faces)


def arc(radius, n, start, end, centre=0.0):
    """Chords of an arc in the (r, z) half-plane, angle from +r, drawn with exact area."""
    count = round(n * abs(end - start) / (2 * math.pi))
    grow = spread(n)
    points = []
    for i in range(count + 1):
        t = start + (end - start) * i / count
        r = centre + radius * grow * math.cos(t)
        points.append((0.0 if abs(r) < 1e-12 else r, radius * grow * math.sin(t)))
    return points


def half_plane_of_ring(main, tube, n):
    """The tube's section right of the axis; a tube that reaches over the axis is filled there."""
    if tube < main:
        return arc(tube, n, 0, 2 * math.pi, main)[:-1]
    count = round(n * math.acos(-main / tube) / (2 * math.pi)) * 2
    step = 2 * math.acos(-main / tube) / count
    drawn = tube * math.sqrt(step / math.sin(step))
    reach = math.acos(-main / drawn)
    angles = [-reach + 2 * reach * i / count for i in range(1, count)]
    top = drawn * math.sin(reach)
    return [(0.0, -top), *[(main + drawn * math.cos(t), drawn * math.sin(t)) for t in angles], (0.0, top)]


def shape_mesh(shape, n):
    kind = shape["kind"]
    if kind == "box":
        half = np.array(shape["size_in"]) * IN / 2
        box = trimesh.creation.box(extents=2 * half)
        return np.array(box.vertices), np.array(box.faces)
    if kind == "sphere":
        return revolve(arc(shape["diameter_in"] * IN / 2, n, -math.pi / 2, math.pi / 2), n)
    if kind == "ellipsoid":
        vertices, faces = revolve(arc(1.0, n, -math.pi / 2, math.pi / 2), n)
        return vertices * np.array(shape["size_in"]) * IN / 2, faces
    if kind == "cylinder":
        r, h = shape["diameter_in"] * IN / 2, shape["height_in"] * IN / 2
        return revolve([(0.0, -h), (r, -h), (r, h), (0.0, h)], n)
    if kind == "frustum":
        b, t = shape["bottom_diameter_in"] * IN / 2, shape["top_diameter_in"] * IN / 2
        h = shape["height_in"] * IN / 2
        profile = [(0.0, -h)] + [(b, -h)] * (b > 0) + [(t, h)] * (t > 0) + [(0.0, h)]
        return revolve(profile, n)
    if kind == "ring":
        return revolve(half_plane_of_ring(shape["ring_diameter_in"] * IN / 2, shape["tube_diameter_in"] * IN / 2, n), n)
    if kind == "lathe":
        return revolve([(r * IN, z * IN) for r, z in shape["profile_in"]], n)
    raise ValueError(kind)


def solid_body(solid, n):
    vertices, faces = shape_mesh(solid.shape, n)
    vertices = vertices * np.array([*solid.squash, 1.0])
    return manifold(vertices @ solid.turn.T + solid.at, faces)


def hole_body(hole, ball_radius, n):
    reach = 4 * ball_radius
    vertices, faces = revolve([(0.0, 0.0), (hole.radius, 0.0), (hole.radius, reach), (0.0, reach)], n)
    w = hole.outward
    u = np.cross(w, [1.0, 0, 0] if abs(w[0]) < 0.6 else [0, 1.0, 0])
    u /= np.linalg.norm(u)
    frame = np.stack([u, np.cross(w, u), w], axis=1)
    return manifold(vertices @ frame.T + hole.bottom, faces)


def measured(body):
    """Volume, centroid, volume tensor about the centroid, by trimesh."""
    if body.is_empty():
        return 0.0, np.zeros(3), np.zeros((3, 3))
    mesh = body.to_mesh64()
    mesh = trimesh.Trimesh(np.asarray(mesh.vert_properties)[:, :3], np.asarray(mesh.tri_verts), process=False)
    if abs(mesh.volume) < 1e-14:
        return 0.0, np.zeros(3), np.zeros((3, 3))
    return float(mesh.volume), np.array(mesh.center_mass), np.array(mesh.moment_inertia)


def parts_of(ball, n):
    """Each part as it really is in the ball: the last piece that holds a point wins."""
    whole = manifold(*revolve(arc(ball.radius, n, -math.pi / 2, math.pi / 2), n))
    taken = manifold3d.Manifold()
    for hole in ball.holes:
        taken = taken + hole_body(hole, ball.radius, n)
    parts = []
    for solid, cuts in reversed(ball.pieces):
        body = solid_body(solid, n)
        for cut in cuts:
            body = body - solid_body(cut, n)
        parts.append(measured((body ^ whole) - taken))
        taken = taken + body
    parts.append(measured(whole - taken))
    return parts[::-1]


def inside(solid, points):
    p = (points - solid.at) @ solid.turn
    x, y, z = p[:, 0] / solid.squash[0], p[:, 1] / solid.squash[1], p[:, 2]
    s, kind = solid.shape, solid.shape["kind"]
    if kind == "sphere":
        return x * x + y * y + z * z < (s["diameter_in"] * IN / 2) ** 2
    if kind == "ellipsoid":
        a = np.array(s["size_in"]) * IN / 2
        return (x / a[0]) ** 2 + (y / a[1]) ** 2 + (z / a[2]) ** 2 < 1
    if kind == "box":
        a = np.array(s["size_in"]) * IN / 2
        return (abs(x) < a[0]) & (abs(y) < a[1]) & (abs(z) < a[2])
    r = np.hypot(x, y)
    if kind == "cylinder":
        return (r < s["diameter_in"] * IN / 2) & (abs(z) < s["height_in"] * IN / 2)
    if kind == "frustum":
        t = z / (s["height_in"] * IN) + 0.5
        edge = ((1 - t) * s["bottom_diameter_in"] + t * s["top_diameter_in"]) * IN / 2
        return (r < edge) & (t > 0) & (t < 1)
    if kind == "ring":
        main, tube = s["ring_diameter_in"] * IN / 2, s["tube_diameter_in"] * IN / 2
        return (r - main) ** 2 + z * z < tube * tube
    odd = np.zeros(len(r), dtype=bool)
    profile = np.array(s["profile_in"]) * IN
    for (r0, z0), (r1, z1) in zip(profile, np.roll(profile, -1, axis=0)):
        if z0 != z1:
            between = (z0 <= z) != (z1 <= z)
            odd ^= between & (r < r0 + (z - z0) * (r1 - r0) / (z1 - z0))
    return odd


def point_check(ball, mass, inertia_trace, side=160):
    """Mass and polar moment about the ball's centre from one random point in each
    cell of a grid, twice; returns how far both are off in standard deviations."""
    rng = np.random.default_rng(7)
    runs = []
    for _ in range(2):
        sums = np.zeros(2)
        for layer in range(side):
            i, j = np.meshgrid(np.arange(side), np.arange(side))
            cell = np.stack([i.ravel(), j.ravel(), np.full(side * side, layer)], axis=1)
            p = ((cell + rng.random(cell.shape)) * 2 / side - 1) * ball.radius
            density = np.full(len(p), ball.densities[0])
            for (solid, cuts), d in zip(ball.pieces, ball.densities[1:]):
                hit = inside(solid, p)
                for cut in cuts:
                    hit &= ~inside(cut, p)
                density[hit] = d
            for hole in ball.holes:
                q = p - hole.bottom
                along = q @ hole.outward
                density[(along > 0) & ((q * q).sum(1) - along**2 < hole.radius**2)] = 0
            square = (p * p).sum(1)
            density[square > ball.radius**2] = 0
            sums += [density.sum(), 2 * (density * square).sum()]
        runs.append(sums * (2 * ball.radius / side) ** 3)
    mean = (runs[0] + runs[1]) / 2
    # One boundary cell in each column of the grid and each surface: a generous spread.
    surfaces = 1 + len(ball.pieces) + len(ball.holes) + sum(len(c) for _, c in ball.pieces)
    sigma = math.sqrt(surfaces * 3 * side**2 / 2) * 0.3 / side**3 * max(ball.densities) / min(ball.densities)
    return [float(abs(mean[0] / mass - 1) / sigma), float(abs(mean[1] / inertia_trace - 1) / sigma)]


def weigh(path):
    ball = Ball(path)
    runs = []
    for n in CHORDS:
        parts = parts_of(ball, n)
        runs.append((*combine(ball.densities, parts), np.array([p[0] for p in parts])))
    fine, middle, coarse = runs[::-1]

    def unsure(k, floor):
        return float(max(np.max(np.abs(fine[k] - middle[k])), np.max(np.abs(middle[k] - coarse[k])) / 2, floor))

    mass, cg, inertia, volumes = fine
    off = point_check(ball, mass, np.trace(inertia) + 2 * mass * (cg @ cg))
    if max(off) > 5:
        raise ValueError(f"{path}: booleans and points disagree by {off} standard deviations")
    return {
        "file": f"balls/{Path(path).name}",
        "mass_kg": mass,
        "mass_uncertainty_kg": unsure(0, mass * 1e-10),
        "cg_m": cg.tolist(),
        "cg_uncertainty_m": unsure(1, ball.radius * 1e-10),
        "inertia_kg_m2": inertia.tolist(),
        "inertia_uncertainty_kg_m2": unsure(2, np.abs(inertia).max() * 1e-10),
        "volumes_m3": volumes.tolist(),
        "volume_uncertainty_m3": unsure(3, volumes.sum() * 1e-10),
        "points_off_in_standard_deviations": [round(o, 2) for o in off],
    }


def main():
    out = []
    only = sys.argv[1:]
    for path in sorted((HERE / "balls").glob("*.ball.json")):
        if only and not any(o in path.name for o in only):
            continue
        row = weigh(path)
        scale = max(abs(x) for r in row["inertia_kg_m2"] for x in r)
        print(f"{path.name:44} {row['mass_kg'] / 0.45359237:8.4f} lb  mass ±{row['mass_uncertainty_kg'] / row['mass_kg']:.1e}"
              f"  tensor ±{row['inertia_uncertainty_kg_m2'] / scale:.1e}  points {row['points_off_in_standard_deviations']}", flush=True)
        out.append(row)
    if only:
        return
    made_with = {"python": platform.python_version(), "trimesh": trimesh.__version__,
                 "manifold3d": version("manifold3d"), "numpy": np.__version__}
    text = json.dumps({"made_with": made_with, "chords": CHORDS, "balls": out}, indent=1)
    (HERE / "weigh_trimesh.json").write_text(text + "\n")


if __name__ == "__main__":
    main()
