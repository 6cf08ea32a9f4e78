"""The ride of tests/published/ride-equations.ts by SciPy's LSODA. Reads the plan's numbers, times and a tolerance; writes wheel positions and the time taken."""

import json
import math
import sys
import time

from scipy.integrate import solve_ivp

GIVEN = json.load(sys.stdin)
GRAVITY, ATMOSPHERE = 9.80665, 101325.0
RATE, DROOP, BUMP = GIVEN["rate"], GIVEN["droop"], GIVEN["bump"]
COMPRESSION, REBOUND = GIVEN["compression"], GIVEN["rebound"]
GAP, STROKE, AREA, CHARGE, GAS = (GIVEN[name] for name in ("gap", "stroke", "area", "charge", "gas"))
SPRUNG, UNSPRUNG = GIVEN["sprung"], GIVEN["unsprung"]
TIRE, TIRE_DAMPING = GIVEN["tireRate"], GIVEN["tireDamping"]
HEIGHT, TURNING, END = GIVEN["height"], GIVEN["turning"], GIVEN["end"]


def slopes(now, state):
    chassis, chassis_speed, wheel, wheel_speed = state
    on = now - 1.0
    road = rise = 0.0
    if 0.0 < on < END:
        road = HEIGHT / 2 * (1 - math.cos(TURNING * on))
        rise = HEIGHT / 2 * TURNING * math.sin(TURNING * on)
    place, speed = wheel - chassis, wheel_speed - chassis_speed
    force = RATE * min(BUMP - DROOP, max(0.0, place - DROOP))
    force += (COMPRESSION if speed > 0 else REBOUND) * speed
    pushed = min(STROKE, place - GAP)
    if pushed >= 0:
        force += AREA * ((CHARGE + ATMOSPHERE) * (GAS / (GAS - AREA * pushed)) ** 1.4 - ATMOSPHERE)
    if place > BUMP:
        force += max(0.0, 2e7 * (place - BUMP) + 2e4 * speed)
    if place < DROOP:
        force -= max(0.0, 2e7 * (DROOP - place) - 2e4 * speed)
    push = max(0.0, TIRE * (road - wheel) + TIRE_DAMPING * (rise - wheel_speed))
    return [chassis_speed, force / SPRUNG - GRAVITY, wheel_speed, (push - force) / UNSPRUNG - GRAVITY]


def solve():
    return solve_ivp(
        slopes,
        (GIVEN["times"][0], GIVEN["times"][-1]),
        GIVEN["start"],
        method="LSODA",
        t_eval=GIVEN["times"],
        rtol=GIVEN["tolerance"],
        atol=GIVEN["tolerance"],
        max_step=0.02,
    )


solve()
taken = []
for _ in range(GIVEN["rounds"]):
    before = time.perf_counter()
    solved = solve()
    taken.append(time.perf_counter() - before)
json.dump({"seconds": min(taken), "wheel": list(solved.y[2] - solved.y[0])}, sys.stdout)
