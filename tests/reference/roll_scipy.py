"""Rolls fifteen balls with scipy's DOP853: one reference for the motion alone.

    python roll_scipy.py               writes roll_scipy.json

The equations are set up from the statement of the motion in the file format:
a rigid ball whose geometric sphere stays on a flat lane, gravity, Coulomb
friction at the contact, the centre of gravity's offset coupled into the normal
force, rolling as long as it needs no more than mu N. Forces and accelerations
come from one linear system of Newton and Euler, solved afresh at every call.

State: x, y, vx, vy of the geometric centre; spin w in lane axes; quaternion
(w, x, y, z) that turns ball axes into lane axes.
"""

import json
import math
import platform
from pathlib import Path

import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, minimize_scalar
from scipy.spatial.transform import Rotation

HERE = Path(__file__).parent
IN, FT, LB, MPH, G = 0.0254, 0.3048, 0.45359237, 0.44704, 9.80665
BOARD = 41.5 * IN / 39
EDGE = 20.75 * IN
PINS = 60 * FT
UP = np.array([0.0, 0.0, 1.0])
STUCK = 1e-9  # m/s: slip below this counts as none
NUDGE = 1e-7  # m/s: slip given to a ball whose friction no longer holds it
CREEP = 0.02  # slip over speed: a ball whose contact creeps by less rolls (model choice)


def cross(a, b):
    return np.array([a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]])


def skew(a):
    return np.array([[0, -a[2], a[1]], [a[2], 0, -a[0]], [-a[1], a[0], 0]])


def turn_of(q):
    w, x, y, z = q / np.linalg.norm(q)
    return np.array([
        [1 - 2 * (y * y + z * z), 2 * (x * y - w * z), 2 * (x * z + w * y)],
        [2 * (x * y + w * z), 1 - 2 * (x * x + z * z), 2 * (y * z - w * x)],
        [2 * (x * z - w * y), 2 * (y * z + w * x), 1 - 2 * (x * x + y * y)]])


def quaternion_of(m):
    x, y, z, w = Rotation.from_matrix(m).as_quat()
    return np.array([w, x, y, z])


class Motion:
    def __init__(self, ball):
        self.m, self.r = ball["mass_kg"], ball["radius_m"]
        self.cg, self.inertia = np.array(ball["cg_m"]), np.array(ball["inertia_kg_m2"])
        self.contact = np.array([0, 0, -self.r])

    def slip(self, s):
        return (s[2:4] + cross(s[4:7], self.contact)[:2])

    def slipping(self, s, mu, direction):
        """Unknowns: ax, ay, alpha (3), N. Friction is -mu N direction."""
        turn = turn_of(s[7:11])
        inertia, d, w = turn @ self.inertia @ turn.T, turn @ self.cg, s[4:7]
        pull = np.array([-mu * direction[0], -mu * direction[1], 1.0])  # force / N
        a = np.zeros((6, 6))
        b = np.zeros(6)
        # m (a + alpha x d + w x (w x d)) - N pull = -m g up
        a[0, 0] = a[1, 1] = self.m
        a[0:3, 2:5] = -self.m * skew(d)
        a[0:3, 5] = -pull
        b[0:3] = -self.m * G * UP - self.m * cross(w, cross(w, d))
        # I alpha - (contact - d) x pull N = -w x I w
        a[3:6, 2:5] = inertia
        a[3:6, 5] = -cross(self.contact - d, pull)
        b[3:6] = -cross(w, inertia @ w)
        u = np.linalg.solve(a, b)
        return u[0:2], u[2:5], u[5]

    def rolling(self, s):
        """Unknowns: alpha (3), force (3); the contact point stays at rest, so a = -alpha x contact."""
        turn = turn_of(s[7:11])
        inertia, d, w = turn @ self.inertia @ turn.T, turn @ self.cg, s[4:7]
        a = np.zeros((6, 6))
        b = np.zeros(6)
        a[0:3, 0:3] = self.m * (skew(self.contact) - skew(d))
        a[0:3, 3:6] = -np.eye(3)
        b[0:3] = -self.m * G * UP - self.m * cross(w, cross(w, d))
        a[3:6, 0:3] = inertia
        a[3:6, 3:6] = -skew(self.contact - d)
        b[3:6] = -cross(w, inertia @ w)
        u = np.linalg.solve(a, b)
        alpha, force = u[0:3], u[3:6]
        return -cross(alpha, self.contact)[:2], alpha, force

    def rates(self, s, acceleration, alpha):
        w, x, y, z = s[7:11]
        p, q, r = s[4:7]
        spin = 0.5 * np.array([-x * p - y * q - z * r, w * p + z * q - y * r, w * q + x * r - z * p, w * r + y * p - x * q])
        return np.concatenate([s[2:4], acceleration, alpha, spin])

    def slip_rate(self, s, mu, direction):
        acceleration, alpha, _ = self.slipping(s, mu, direction)
        return acceleration + cross(alpha, self.contact)[:2]

    def energy(self, s):
        turn = turn_of(s[7:11])
        d, w = turn @ self.cg, s[4:7]
        v = np.array([s[2], s[3], 0.0]) + cross(w, d)
        return 0.5 * self.m * v @ v + 0.5 * w @ (turn @ self.inertia @ turn.T @ w) + self.m * G * d[2]

    def breakaway(self, s, mu):
        """The direction in which slip grows from nothing: it must grow along itself."""
        force = self.rolling(s)[2]
        pull = math.hypot(force[0], force[1])
        if pull < mu * force[2] * (1 + 1e-6):
            return -force[:2] / pull

        def off(t):
            e = np.array([math.cos(t), math.sin(t)])
            u = self.slip_rate(s, mu, e)
            return e[0] * u[1] - e[1] * u[0], e @ u

        angles = np.linspace(0, 2 * math.pi, 361)
        values = [off(t)[0] for t in angles]
        found = [brentq(lambda t: off(t)[0], t0, t1, xtol=1e-15)
                 for t0, t1, f0, f1 in zip(angles, angles[1:], values, values[1:]) if f0 * f1 < 0]
        found = [t for t in found if off(t)[1] > 0]
        if len(found) != 1:
            raise ValueError(f"{len(found)} ways to break away")
        return np.array([math.cos(found[0]), math.sin(found[0])])


def release(shot):
    """Centre, velocity, spin and orientation at the foul line."""
    r, left = shot["release"], shot["hand"] == "left"
    side = 1 if left else -1
    x = side * (r["board"] - 20) * BOARD
    launch = math.radians(r["launch_angle_deg"])
    v = r["speed_mph"] * MPH * np.array([math.sin(launch), math.cos(launch)])
    rotation, tilt = math.radians(r["axis_rotation_deg"]), math.radians(r["axis_tilt_deg"])
    axis = np.array([-math.cos(tilt) * math.cos(rotation), -math.cos(tilt) * math.sin(rotation), math.sin(tilt)])
    if left:
        axis *= np.array([1, -1, -1])
    spin = axis * r["revs_rpm"] * 2 * math.pi / 60

    layout = shot["layout"]
    arc = layout["pin_to_pap_in"] * IN / shot["ball"]["radius_m"]
    turn = math.radians(layout["drilling_angle_deg"]) * (-1 if left else 1)
    pap_ball = np.array([math.sin(arc) * math.cos(turn), math.sin(arc) * math.sin(turn), math.cos(arc)])
    pap_lane = -axis if left else axis

    def frame(along, towards):
        second = towards - along * (along @ towards)
        second /= np.linalg.norm(second)
        return np.stack([along, second, cross(along, second)], axis=1)

    pin_at_pap = math.sin(arc) < 1e-9
    vertical = math.hypot(axis[0], axis[1]) < 1e-9
    mark = np.array([1.0, 0, 0]) if pin_at_pap else UP
    target = np.array([0, 1.0, 0]) if (pin_at_pap or vertical) else UP
    orientation = frame(pap_lane, target) @ frame(pap_ball, mark).T
    start = math.radians(layout["start_turn_deg"])
    orientation = Rotation.from_rotvec(pap_lane * start).as_matrix() @ orientation
    assert np.allclose(orientation @ pap_ball, pap_lane) and abs(np.linalg.det(orientation) - 1) < 1e-12
    return np.concatenate([[x, 0.0], v, spin, quaternion_of(orientation)])


def rolls_from(motion, phases):
    """Where slip has last fallen below a fiftieth of the speed and then ends or stops falling."""
    def creep(s):
        return np.linalg.norm(motion.slip(s)) - CREEP * np.linalg.norm(s[2:4])

    since = None
    for kind, run in phases:
        if kind == "roll":
            since = float(run.y[1, 0]) if since is None else since
            continue
        times = np.linspace(run.t[0], run.t[-1], 8001)
        slides = [creep(run.sol(t)) > 0 for t in times]
        if any(slides):
            since = None
        if since is not None or slides[-1]:
            continue
        first = len(slides) - slides[::-1].index(True) if any(slides) else 0
        size = lambda t: np.linalg.norm(motion.slip(run.sol(t)))
        sizes = [size(t) for t in times[first:]]
        for i in range(1, len(sizes) - 1):
            if sizes[i - 1] > sizes[i] <= sizes[i + 1]:
                ends = times[first + i - 1], times[first + i + 1]
                least = minimize_scalar(size, bounds=ends, method="bounded", options={"xatol": 1e-12}).x
                since = float(run.sol(least)[1])
                break
    return None if since is None else since / FT


def roll(shot, friction=None):
    """Friction by zone, or by `friction(x, y)` where it is given."""
    motion = Motion(shot["ball"])
    state, t = release(shot), 0.0
    own = -1 if shot["hand"] == "left" else 1
    axis_start = turn_of(state[7:11]).T @ state[4:7]
    zones = shot["zones"]
    zone = 0

    def friction_at(s):
        return friction(s[0], s[1]) if friction else zones[zone]["mu"]

    phases = []  # (kind, solution)
    forced = None
    while True:
        mu = friction_at(state)
        u = motion.slip(state)
        kind = "slip"
        if np.linalg.norm(u) <= 2 * STUCK:
            _, _, force = motion.rolling(state)
            kind = "roll" if math.hypot(force[0], force[1]) <= mu * force[2] and not forced else "slip"
            if kind == "slip":
                state = state.copy()
                state[2:4] += NUDGE * motion.breakaway(state, mu)
        forced = None

        def past_zone(_, s):
            return s[1] - zones[zone]["to_ft"] * FT
        def pins(_, s):
            return s[1] - PINS
        def gutter(_, s):
            return EDGE - abs(s[0])
        def stick(_, s):
            return np.linalg.norm(motion.slip(s)) - STUCK
        def breaks(_, s):
            force = motion.rolling(s)[2]
            return friction_at(s) * force[2] - math.hypot(force[0], force[1])
        change = stick if kind == "slip" else breaks
        events = [past_zone, pins, gutter, change]
        for e in events:
            e.terminal = True
        change.direction = -1

        if kind == "slip":
            def rates(_, s):
                u = motion.slip(s)
                acceleration, alpha, normal = motion.slipping(s, friction_at(s), u / np.linalg.norm(u))
                if normal <= 0:
                    raise ValueError("the ball hops")
                return motion.rates(s, acceleration, alpha)
        else:
            def rates(_, s):
                acceleration, alpha, _ = motion.rolling(s)
                return motion.rates(s, acceleration, alpha)
        run = solve_ivp(rates, (t, t + 60), state, method="DOP853", rtol=1e-12, atol=1e-13,
                        events=events, dense_output=True, max_step=0.02)
        if not run.success:
            raise ValueError(run.message)
        phases.append((kind, run))
        before, after = motion.energy(state), motion.energy(run.y[:, -1])
        if after > before * (1 + 1e-9) or (kind == "roll" and after < before * (1 - 1e-8)):
            raise ValueError(f"{kind}: energy went from {before} to {after}")
        t, state = run.t[-1], run.y[:, -1].copy()
        if len(run.t_events[1]) or len(run.t_events[2]):
            break
        if len(run.t_events[0]):
            zone += 1
        elif kind == "roll":
            forced = "slip"

    hit = len(phases[-1][1].t_events[2]) > 0
    # Furthest to the bowler's own side.
    times = np.concatenate([np.linspace(r.t[0], r.t[-1], 4001) for _, r in phases])
    path = np.concatenate([r.sol(np.linspace(r.t[0], r.t[-1], 4001)) for _, r in phases], axis=1)
    side = own * path[0]
    i = int(np.argmax(side))
    far = path[:, i]
    if 0 < i < len(times) - 1:
        for _, r in phases:
            if r.t[0] < times[i] < r.t[-1]:
                lo, hi = max(times[i - 1], r.t[0]), min(times[i + 1], r.t[-1])
                f = lambda q: r.sol(q)[2]
                if f(lo) * f(hi) < 0:
                    far = r.sol(brentq(f, lo, hi, xtol=1e-14))
    last_kind, last = phases[-1]
    rolls_ft = rolls_from(motion, phases)

    def board(x):
        return 20 - own * x / BOARD

    out = {
        "gutter": hit,
        "roll_start_ft": rolls_ft,
        "slip_phases": sum(1 for j, p in enumerate(phases) if p[0] == "slip" and (j == 0 or phases[j - 1][0] == "roll")),
        "breakpoint_board": float(board(far[0])),
        "breakpoint_ft": float(far[1] / FT),
    }
    if hit:
        out.update({"end_ft": float(state[1] / FT), "end_time_s": float(t)})
    else:
        axis_end = turn_of(state[7:11]).T @ state[4:7]
        out.update({
            "time_s": float(t),
            "board_at_pins": float(board(state[0])),
            "entry_angle_deg": math.degrees(math.atan2(-own * state[2], state[3])),
            "speed_at_pins_mph": float(math.hypot(*state[2:4]) / MPH),
            "revs_at_pins_rpm": float(np.linalg.norm(state[4:7]) * 60 / (2 * math.pi)),
            "axis_migration_deg": math.degrees(math.atan2(np.linalg.norm(cross(axis_start, axis_end)), axis_start @ axis_end)),
        })
    steps = sum(len(r.t) for _, r in phases)
    return out, [p[0] for p in phases], steps


def ball(weight_lb, rg_in, turn_deg=(0, 0, 0), cg_in=(0, 0, 0), diameter_in=8.55):
    """A tensor from three RGs about ball axes, tilted a little if asked."""
    mass = weight_lb * LB
    tilt = Rotation.from_euler("xyz", turn_deg, degrees=True).as_matrix()
    inertia = tilt @ np.diag([mass * (g * IN) ** 2 for g in rg_in]) @ tilt.T
    inertia = (inertia + inertia.T) / 2
    return {"mass_kg": mass, "radius_m": diameter_in * IN / 2, "cg_m": [c * IN for c in cg_in], "inertia_kg_m2": inertia.tolist()}


def shot(name, ball, hand, speed, revs, rotation, tilt, launch, board, pin, angle=0, start=0, zones=((0, 40, 0.04), (40, 63, 0.2))):
    return {"name": name, "ball": ball, "hand": hand,
            "release": {"speed_mph": speed, "revs_rpm": revs, "axis_rotation_deg": rotation, "axis_tilt_deg": tilt,
                        "launch_angle_deg": launch, "board": board},
            "layout": {"pin_to_pap_in": pin, "drilling_angle_deg": angle, "start_turn_deg": start},
            "zones": [{"from_ft": a, "to_ft": b, "mu": m} for a, b, m in zones]}


QUARTER = 8.55 * math.pi / 4
UNIFORM = ball(14.8, (2.7, 2.7, 2.7))
SYMMETRIC = ball(15, (2.53, 2.53, 2.48), cg_in=(0, 0, 0.04))
ASYMMETRIC = ball(15, (2.54, 2.51, 2.475), (3, -2, 10), (0.01, -0.015, 0.045))
STRONG = ball(15.2, (2.55, 2.52, 2.49), (0, 6, 40), (0.03, 0.02, 0.09))
ODD = ball(13.6, (2.62, 2.5, 2.3), (25, 40, -60), (0.07, -0.06, 0.09))
FOUR = ((0, 8, 0.03), (8, 31.5, 0.05), (31.5, 44, 0.12), (44, 63, 0.22))
SHOTS = [
    shot("uniform ball", UNIFORM, "right", 17.9, 416, 45, 0, 1.8, 10, 4),
    shot("uniform ball, no spin", UNIFORM, "right", 15, 0, 0, 0, 0.3, 18, 3, 20),
    shot("symmetric core, high flare", SYMMETRIC, "right", 17, 300, 45, 12, 3.0, 25, 3.375),
    shot("symmetric core, left-handed", SYMMETRIC, "left", 17, 300, 45, 12, -3.0, 25, 3.375, 50, 30),
    shot("asymmetric core", ASYMMETRIC, "right", 16.5, 350, 55, 10, 3.5, 27, 4, 60),
    shot("asymmetric core, left-handed", ASYMMETRIC, "left", 18, 400, 65, 15, -4.0, 28, 4.5, 35, -75),
    shot("four zones of friction", ASYMMETRIC, "right", 16, 280, 40, 18, 2.2, 22, 5, 80, 120, FOUR),
    shot("strong top weight", STRONG, "right", 15, 250, 30, 5, 3.5, 20, 2.5, 30, 200, ((0, 30, 0.06), (30, 63, 0.25))),
    shot("pin at the axis", STRONG, "right", 17, 320, 60, 12, 4.0, 26, 0, 45),
    shot("pin opposite the axis", STRONG, "left", 16, 300, 40, 20, -2.5, 24, 2 * QUARTER, 15),
    shot("axis upright", ASYMMETRIC, "right", 16, 200, 0, 90, 0.5, 20, 3, 70),
    shot("axis upright, pin at the axis", SYMMETRIC, "left", 14, 150, 30, -90, -0.5, 21, 0, 0, 10),
    shot("rolls early, then thrown about by an odd ball", ODD, "right", 12, 180, 20, 8, 2.5, 14, 4, 60, 0, ((0, 20, 0.15), (20, 45, 0.05), (45, 63, 0.2))),
    shot("back-up spin from a strong ball", STRONG, "right", 14, 220, -35, -10, -1.5, 14, 6, 110, -40, ((0, 35, 0.05), (35, 63, 0.18))),
    shot("into the gutter", ASYMMETRIC, "right", 19, 250, 70, 10, 4.0, 12, 4, 60),
]


def main():
    out = []
    for s in SHOTS:
        result, kinds, steps = roll(s)
        print(s["name"], kinds, steps)
        print("   ", {k: (round(v, 5) if isinstance(v, float) else v) for k, v in result.items()}, flush=True)
        out.append({**s, "result": result})
    made_with = {"python": platform.python_version(), "scipy": scipy.__version__, "numpy": np.__version__}
    (HERE / "roll_scipy.json").write_text(json.dumps({"made_with": made_with, "shots": out}, indent=1) + "\n")


if __name__ == "__main__":
    main()
