#!/usr/bin/env python3
"""Room of the rear tyre beside seatstays and upper members of swing arms, worked out apart from the program.
Use: tyre_room.py > tyre_room.csv

The tyre is a ring of round section: its core is a circle about the rear axle in the middle plane. A member is walked in
steps of about a hundredth of a millimetre; at each the distance of its axis from the core is that of plane trigonometry,
and the least of them, less half the tyre and half the member, is the room.

A seatstay runs from the side of the seat tube, an upper member from the axis of the tube across at the shock's moving eye,
both to their end at the dropout: on the line to the axle in the side view, 18 before it, 4 outside the axle's face. A bend
is the corner its straight parts would meet in, off the straight line outward, rounded by its radius.

Reads the table of the demo's orders; python 3, nothing else.
"""
import json
import math
import pathlib

HERE = pathlib.Path(__file__).resolve().parent
ORDERS = HERE.parents[2] / "main" / "resources" / "demo" / "orders.json"
STEPS = 20000


def ends(g):
    """Axle in the side view, and the member's two ends in space."""
    axle_y = g["SHELL_DROP"] + g["REAR_WHEEL_RADIUS"] - g["FRONT_WHEEL_RADIUS"]
    axle = (-math.sqrt(g["CHAINSTAY"] ** 2 - axle_y**2), axle_y)
    if "PIVOT_AHEAD" in g:
        turn = math.radians(g["SHOCK_ARM_ANGLE"])
        x = g["PIVOT_AHEAD"] + g["SHOCK_ARM"] * math.cos(turn)
        y = g["PIVOT_ABOVE"] + g["SHOCK_ARM"] * math.sin(turn)
        z = (g["ARM_UPPER_INSIDE"] + g["SEATSTAY_OUTSIDE"]) / 2
    else:
        seat = math.radians(g["SEAT_ANGLE"])
        offset = g.get("SEAT_TUBE_OFFSET", 0)
        up = g["SEAT_TUBE"] - g["SEATSTAY_AT_SEAT"]
        x = offset * math.sin(seat) - up * math.cos(seat)
        y = offset * math.cos(seat) + up * math.sin(seat)
        z = g["SEAT_TUBE_OUTSIDE"] / 2
    apart = math.hypot(axle[0] - x, axle[1] - y)
    back = ((axle[0] - x) / apart, (axle[1] - y) / apart)
    before = g.get("AXLE_TO_STAY", 18)
    outside = g["AXLE_WIDTH"] / 2 + g.get("STAY_OUTSIDE_FACE", 4)
    return axle, (x, y, z), (axle[0] - before * back[0], axle[1] - before * back[1], outside)


def walked(length, g):
    """Places of the axis, along its straight line and off it."""
    if "PIVOT_AHEAD" in g or "SEATSTAY_BEND_1" not in g:
        return [(length * i / STEPS, 0.0) for i in range(STEPS + 1)]
    along, off, radius = g["SEATSTAY_BEND_1"], g["SEATSTAY_BEND_1_OUT"], g["SEATSTAY_BEND_1_RADIUS"]
    first, second = math.atan2(off, along), math.atan2(-off, length - along)
    cut = radius * math.tan((first - second) / 2)
    straight = math.hypot(along, off) - cut
    places = [(straight * i / STEPS * math.cos(first), straight * i / STEPS * math.sin(first)) for i in range(STEPS + 1)]
    u, v = places[-1]
    centre = (u + radius * math.sin(first), v - radius * math.cos(first))
    for i in range(STEPS + 1):
        heading = first - (first - second) * i / STEPS
        places.append((centre[0] - radius * math.sin(heading), centre[1] + radius * math.cos(heading)))
    u, v = places[-1]
    places += [(u + (length - u) * i / STEPS, v - v * i / STEPS) for i in range(STEPS + 1)]
    return places


def room(g):
    axle, front, rear = ends(g)
    length = math.dist(front, rear)
    line = [(b - a) / length for a, b in zip(front, rear)]
    out = [-line[0] * line[2], -line[1] * line[2], 1 - line[2] ** 2]
    out = [c / math.hypot(*out) for c in out]
    core = g["REAR_WHEEL_RADIUS"] - g["REAR_TYRE_WIDTH"] / 2
    least = math.inf
    for u, v in walked(length, g):
        x, y, z = (front[k] + u * line[k] + v * out[k] for k in range(3))
        least = min(least, math.hypot(math.hypot(x - axle[0], y - axle[1]) - core, z))
    return least - g["REAR_TYRE_WIDTH"] / 2 - g["SEATSTAY_OUTSIDE"] / 2


print("# Room of the rear tyre beside seatstay or upper member, mm; by tyre_room.py beside this file.")
print("frame,room")
for order in json.loads(ORDERS.read_text(encoding="utf-8")):
    given = order.get("geometry") or {}
    if "REAR_TYRE_WIDTH" in given:
        print(f"{order['order']},{room(given):.4f}")
