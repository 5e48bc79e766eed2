#!/usr/bin/env python3
"""What a failed height gauge leaves of seven frames, worked out apart from the program. Use: hg2.py > hg2.csv

The gauge was found to read 0.18 mm too high at 300 mm, and nobody knows since when. At every height its error is taken
to lie anywhere from 0 to 0.18, the same for heights within 20 mm of each other and independent beyond; that is the rule
of the shop. Every height that it read is freed of every combination of errors out of a grid, one error for each group of
heights, and every deviation computed anew by the plain formulas of the trade:

    lean    = atan((upper - lower) / distance)         twist = lean of the head tube - lean of the seat tube
    offset  = mean of two heights - height of the post, which is set and not read

A deviation keeps its verdict if it conforms at every combination: |y| <= limit - 1.65 u, the guard band of the shop
(ISO 14253-1). u is the root of the sum of squares (JCGM 100:2008, 5.1.2) of what is independent from height to height;
the gauge's own 0.012 is common to its heights, so it falls out of a lean and stays whole in a mean (JCGM 100:2008,
F.1.2.3). A frame whose deviation does not keep its verdict is measured again, or its owner told if it was shipped.

Reads the heights of the demo and the table of its orders; python 3, nothing else.
"""
import csv
import itertools
import math
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent
HEIGHTS = HERE.parents[2] / "main" / "resources" / "demo" / "heights.csv"
ORDERS = HERE / "orders.csv"

ERRORS = [0.0, 0.06, 0.12, 0.18]
ALIKE = 20.0
POST = 150.0
SEAT, MANDREL = 300.0, 300.0
FACTOR = 1.65
LIMITS = {"1": 0.30, "2": 0.8, "3": 1.0, "9": 0.30, "10": 0.30}

GAUGE, REPEAT, PLATE, CLAMP, OVAL, BAR, POST_U = 0.012, 0.03, 0.006, 0.03, 0.04, 0.005, 0.05
ON_TUBE = math.sqrt(REPEAT**2 + PLATE**2 + CLAMP**2 + OVAL**2)
ON_BAR = math.sqrt(REPEAT**2 + PLATE**2 + CLAMP**2 + BAR**2)
U_SEAT = math.degrees(math.sqrt(2) * ON_TUBE / SEAT)
U_HEAD = math.degrees(math.sqrt(2) * ON_BAR / MANDREL)
U_MEAN = math.sqrt(ON_BAR**2 / 2 + GAUGE**2 + POST_U**2)
U = {"1": math.hypot(U_SEAT, U_HEAD), "2": U_MEAN, "3": U_MEAN, "9": U_SEAT, "10": U_HEAD}

SPOTS = ["seat low", "seat high", "head low", "head high", "axle drive", "axle other"]


def rows(path):
    with open(path, encoding="utf-8") as lines:
        return list(csv.DictReader((line for line in lines if not line.startswith("#")), delimiter=";"))


def groups(heights):
    """Places of heights that share an error: runs in which each is within 20 mm of the first. Here no run is longer."""
    order = sorted(range(len(heights)), key=lambda i: heights[i])
    runs = []
    for i in order:
        if runs and heights[i] - heights[runs[-1][0]] <= ALIKE:
            runs[-1].append(i)
        else:
            if runs and heights[i] - heights[runs[-1][-1]] <= ALIKE:
                sys.exit("A chain of heights is longer than 20 mm; this script does not try its cuts.")
            runs.append([i])
    return runs


def deviations(h):
    seat_low, seat_high, low, high, drive, other = h
    seat = math.degrees(math.atan((seat_high - seat_low) / SEAT))
    head = math.degrees(math.atan((high - low) / MANDREL))
    return {
        "1": head - seat,
        "2": (low + high) / 2 - POST,
        "3": (drive + other) / 2 - POST,
        "9": seat,
        "10": head,
    }


def main():
    shipped = {row["order"] for row in rows(ORDERS) if row["state"].startswith("shipped")}
    out = csv.writer(sys.stdout, delimiter=";", lineterminator="\n")
    out.writerow(["order", "characteristic", "value", "least", "greatest", "u", "outcome", "frame"])
    table = [row for row in rows(HEIGHTS) if row["gauge"] == "HG-2"]
    found, frames = [], {}
    for row in table:
        heights = [float(row[spot]) for spot in SPOTS]
        assert row["base"] == "MANDREL"
        runs = groups(heights)
        tried = []
        for errors in itertools.product(ERRORS, repeat=len(runs)):
            true = list(heights)
            for run, error in zip(runs, errors):
                for i in run:
                    true[i] -= error
            tried.append(deviations(true))
        for code, value in deviations(heights).items():
            least = min(one[code] for one in tried)
            greatest = max(one[code] for one in tried)
            room = LIMITS[code] - FACTOR * U[code]
            cleared = -room <= least and greatest <= room
            outcome = "CLEARED" if cleared else "MEASURE_AGAIN"
            found.append((row["order"], row["operation"] + "-" + code, value, least, greatest, U[code], outcome))
            if not cleared:
                frames[row["order"]] = "CONTACT_OWNER" if row["order"] in shipped else "MEASURE_AGAIN"
    for order, code, value, least, greatest, u, outcome in found:
        out.writerow([order, code] + ["%.6f" % x for x in (value, least, greatest, u)]
                     + [outcome, frames.get(order, "CLEARED")])


main()
