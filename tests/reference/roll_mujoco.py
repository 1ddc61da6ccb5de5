"""Drops the same balls into MuJoCo: a general-purpose rigid-body engine on the same friction.

    python roll_mujoco.py              writes roll_mujoco.json

A sphere with the ball's mass, centre of gravity and whole inertia tensor lies
on a plane; gravity; one contact with an elliptic friction cone. MuJoCo's
contacts are soft, so its answers come near a rigid ball's and not to every
digit; each shot is run at two time steps, and the difference tells how near. Friction is set anew before every step from
where the ball is: by zone, or by the film of oil_scipy.py.
"""

import json
import math
import platform
import time
from pathlib import Path

import mujoco
import numpy as np

import oil_scipy
import roll_scipy
from roll_scipy import BOARD, FT, G, MPH, PINS, release

HERE = Path(__file__).parent
STEPS = (2e-4, 1e-4)  # s
SOFT = 5e-3  # s: time constant of the contact; much stiffer ones make the ball chatter


def model_of(ball, step):
    i = np.array(ball["inertia_kg_m2"])
    full = [i[0, 0], i[1, 1], i[2, 2], i[0, 1], i[0, 2], i[1, 2]]
    numbers = lambda values: " ".join(repr(float(v)) for v in values)
    contact = f'solref="{SOFT} 1" solimp="0.9999 0.9999 0.001 0.5 2"'
    return mujoco.MjModel.from_xml_string(f"""
<mujoco>
  <compiler balanceinertia="false" boundmass="0" boundinertia="0"/>
  <option timestep="{step}" gravity="0 0 {-G!r}" cone="elliptic" impratio="10" integrator="RK4"
          tolerance="1e-14" iterations="50" solver="Newton"/>
  <worldbody>
    <geom name="lane" type="plane" size="50 50 1" condim="3" {contact}/>
    <body name="ball" pos="0 0 {ball["radius_m"]!r}">
      <freejoint/>
      <inertial pos="{numbers(ball["cg_m"])}" mass="{ball["mass_kg"]!r}" fullinertia="{numbers(full)}"/>
      <geom name="ball" type="sphere" size="{ball["radius_m"]!r}" condim="3" {contact}/>
    </body>
  </worldbody>
</mujoco>""")


def roll(shot, friction, step):
    model = model_of(shot["ball"], step)
    data = mujoco.MjData(model)
    s = release(shot)
    q = s[7:11] / np.linalg.norm(s[7:11])
    turn = roll_scipy.turn_of(q)
    data.qpos[:] = [s[0], s[1], shot["ball"]["radius_m"], *q]
    data.qvel[:] = [s[2], s[3], 0.0, *(turn.T @ s[4:7])]
    began = time.perf_counter()
    own = -1 if shot["hand"] == "left" else 1
    furthest, before, t0 = -math.inf, None, 0.0
    while data.qpos[1] < PINS:
        x, y = float(data.qpos[0]), float(data.qpos[1])
        furthest = max(furthest, own * x)
        model.geom_friction[:, 0] = friction(x, y)
        before, t0 = (data.qpos.copy(), data.qvel.copy()), data.time
        mujoco.mj_step(model, data)
        if data.time > 10:
            raise ValueError("it does not arrive")
    took = time.perf_counter() - began
    part = (PINS - before[0][1]) / (data.qpos[1] - before[0][1])
    x = before[0][0] + part * (data.qpos[0] - before[0][0])
    v = before[1][:3] + part * (data.qvel[:3] - before[1][:3])
    spin = before[1][3:] + part * (data.qvel[3:] - before[1][3:])
    return {
        "time_s": float(t0 + part * step),
        "board_at_pins": float(20 - own * x / BOARD),
        "entry_angle_deg": math.degrees(math.atan2(-own * v[0], v[1])),
        "speed_at_pins_mph": math.hypot(v[0], v[1]) / MPH,
        "revs_at_pins_rpm": float(np.linalg.norm(spin)) * 60 / (2 * math.pi),
        "breakpoint_board": float(20 - furthest / BOARD),
    }, took


def by_zone(zones):
    def mu(_, y):
        return next((z["mu"] for z in zones if y < z["to_ft"] * FT), zones[-1]["mu"])
    return mu


def main():
    named = {s["name"]: s for s in roll_scipy.SHOTS + oil_scipy.SHOTS}
    lopsided = oil_scipy.lopsided_cells()
    out = []
    for name in ["uniform ball", "symmetric core, high flare", "asymmetric core", "asymmetric core, left-handed", "pin at the axis",
                 "house, symmetric core", "house, left-handed", "lopsided map, left-handed"]:
        shot = named[name]
        if "oil" in shot:
            cells = lopsided if shot["oil"] == "lopsided" else oil_scipy.pattern_cells(shot["oil"])
            friction = oil_scipy.Oiled(cells, shot["law"]).mu
        else:
            friction = by_zone(shot["zones"])
        (coarse, _), (fine, took) = (roll(shot, friction, step) for step in STEPS)
        print(name, f"{took:.1f} s", {k: (round(v, 4), round(v - coarse[k], 5)) for k, v in fine.items()}, flush=True)
        out.append({**shot, "result": fine, "less_coarse": {k: v - coarse[k] for k, v in fine.items()}, "took_s": round(took, 2)})
    made_with = {"python": platform.python_version(), "mujoco": mujoco.__version__, "numpy": np.__version__, "steps_s": STEPS}
    (HERE / "roll_mujoco.json").write_text(json.dumps({"made_with": made_with, "shots": out}, indent=1) + "\n")


if __name__ == "__main__":
    main()
