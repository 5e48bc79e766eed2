"""Invented oven records of the invented workshop, and what they are worth, computed apart from the project.

    python3 ovens.py records   writes HT-*.csv, CU-*.csv and SO-*.csv where the invented workshop reads them
    python3 ovens.py table     reads them again and writes runs.csv

Works in its own way: each line between two readings is cut at every place where two thermocouples cross or one crosses a
limit, and the pieces are asked at their middle; rates are summed by the midpoint rule in steps of two seconds, with the
gas constant 8.314 and 273.15.
"""
import csv
import datetime
import math
import pathlib
import sys

RECORDS = pathlib.Path(__file__).resolve().parents[3] / "main" / "resources" / "demo"

FOUND = datetime.date(2026, 3, 16)
LAST_GOOD = datetime.date(2026, 2, 20)
FOUND_ERROR = 7.0

# minutes and degrees of the coldest load thermocouple
AGE_6061 = [(0, 22), (15, 95), (30, 142), (45, 163), (60, 172), (75, 176), (90, 177), (300, 178), (480, 177),
            (555, 177), (570, 150), (600, 90)]
AGE_7005 = [(0, 22), (20, 70), (45, 98), (70, 105), (90, 107), (560, 107), (670, 147), (700, 148.2), (900, 148.7),
            (1400, 148.6), (1625, 148.6), (1645, 128), (1685, 80)]

# run, begin by the clock of the workshop (winter time, UTC+1), shape, how much hotter the second thermocouple is
RUNS = [
    ("HT-0222", "2026-02-19 18:00", "6061", AGE_6061, 1.6, 0.4),
    ("HT-0223", "2026-02-26 18:05", "6061", AGE_6061, 1.5, 0.3),
    ("HT-0224", "2026-03-03 18:10", "6061", AGE_6061, 1.8, 0.4),
    ("HT-0225", "2026-03-05 15:00", "7005", AGE_7005, 1.4, 0.5),
    ("HT-0226", "2026-03-10 18:00", "6061", AGE_6061, 1.9, 0.7),
    ("HT-0227", "2026-03-13 06:15", "7005", AGE_7005, 1.6, 0.4),
    ("HT-0228", "2026-03-16 05:30", "6061", AGE_6061, 2.0, 0.5),
]

# bakes of a coat, for the metal's thermocouple: 20 min at 160
BAKE = [(0, 22), (8, 120), (13, 155), (15, 160), (35, 160), (39, 140), (55, 60)]
BAKES = [("CU-0043", "2026-03-12 10:00")]

# a solution treatment in a hot oven, for the thermocouple on the load; the door opens 8 s before the 66th minute
SOLUTION = [(0, 24), (3, 290), (6, 430), (9, 502), (12, 522), (13, 526), (16, 529), (65.75, 529), (66, 516),
            (66.25, 38), (67, 30)]
SOLUTIONS = [("SO-0031", "2026-03-18 05:34")]


def at(shape, minute):
    for (t0, d0), (t1, d1) in zip(shape, shape[1:]):
        if t0 <= minute <= t1:
            return d0 + (d1 - d0) * (minute - t0) / (t1 - t0)
    raise ValueError(minute)


def records():
    for name, begin, _, shape, above, swing in RUNS:
        start = datetime.datetime.fromisoformat(begin)
        rows = []
        for minute in range(0, shape[-1][0] + 1):
            cold = at(shape, minute)
            hot = cold + above + swing * math.sin(minute / 37)
            control = cold + 0.5 + 0.3 * math.sin(minute / 11)
            rows.append((minute, cold, hot, control))
        with open(RECORDS / (name + ".csv"), "w", encoding="utf-8", newline="") as file:
            if name == "HT-0226":
                file.write("\ufeff")
            file.write("Date and time;TC-05 °C;TC-07 °C;TC-08 °C\r\n")
            for minute, cold, hot, control in rows:
                # a gap of four minutes, and a row that is there twice
                if name == "HT-0226" and 200 < minute < 204:
                    continue
                time = (start + datetime.timedelta(minutes=minute)).strftime("%Y-%m-%d %H:%M:%S")
                line = ("%s;%.1f;%.1f;%.1f" % (time, control, cold, hot)).replace(".", ",") + "\r\n"
                file.write(line)
                if name == "HT-0226" and minute == 123:
                    file.write(line)
    for name, begin in BAKES:
        start = datetime.datetime.fromisoformat(begin)
        with open(RECORDS / (name + ".csv"), "w", encoding="utf-8", newline="") as file:
            file.write("time,TC-21,TC-22\r\n")
            for half in range(0, 2 * BAKE[-1][0] + 1):
                time = (start + datetime.timedelta(seconds=30 * half)).strftime("%Y-%m-%dT%H:%M:%S")
                file.write("%s,%.1f,%.1f\r\n" % (time, at(BAKE, half / 2) + 3, at(BAKE, half / 2)))
    for name, begin in SOLUTIONS:
        start = datetime.datetime.fromisoformat(begin)
        with open(RECORDS / (name + ".csv"), "w", encoding="utf-8", newline="") as file:
            file.write("Time;TC-01;TC-02;TC-03\r\n")
            for quarter in range(0, 4 * SOLUTION[-1][0] + 1):
                minute = quarter / 4
                air = 530.5 - 28 * math.exp(-minute / 5) - (12 if minute >= 66 else 0)
                time = (start + datetime.timedelta(seconds=15 * quarter)).strftime("%Y-%m-%d %H:%M:%S")
                file.write(("%s;%.1f;%.1f;%.1f\r\n" % (time, air, air + 0.6, at(SOLUTION, minute))).replace(".", ","))


def read(name):
    """Minutes since the first row, TC-07, TC-08."""
    seen = {}
    with open(RECORDS / (name + ".csv"), encoding="utf-8-sig", newline="") as file:
        for row in list(csv.reader(file, delimiter=";"))[1:]:
            time = datetime.datetime.fromisoformat(row[0])
            seen[time] = (float(row[2].replace(",", ".")), float(row[3].replace(",", ".")))
    times = sorted(seen)
    return [((t - times[0]).total_seconds() / 60, *seen[t]) for t in times]


def pieces(rows, limits):
    """Stretches in which neither the order of the two nor the side of a limit changes, with the coldest at both ends."""
    for (t0, a0, b0), (t1, a1, b1) in zip(rows, rows[1:]):
        cuts = {0.0, 1.0}
        for here, there in [(a0, a1), (b0, b1)]:
            for limit in limits:
                if (here - limit) * (there - limit) < 0:
                    cuts.add((limit - here) / (there - here))
        if (a0 - b0) * (a1 - b1) < 0:
            cuts.add((a0 - b0) / ((a0 - b0) - (a1 - b1)))
        cuts = sorted(cuts)
        for u, v in zip(cuts, cuts[1:]):
            yield (t0 + u * (t1 - t0), t0 + v * (t1 - t0),
                   min(a0 + u * (a1 - a0), b0 + u * (b1 - b0)), min(a0 + v * (a1 - a0), b0 + v * (b1 - b0)))


def in_band(rows, low, high):
    return sum(t1 - t0 for t0, t1, c0, c1 in pieces(rows, [low, high]) if low <= (c0 + c1) / 2 <= high) / 60


def worth(rows, reference, energy):
    total = 0.0
    for t0, t1, c0, c1 in pieces(rows, []):
        steps = max(1, math.ceil((t1 - t0) * 30))
        for i in range(steps):
            degrees = c0 + (c1 - c0) * (i + 0.5) / steps
            total += math.exp(-energy * 1000 / 8.314 * (1 / (degrees + 273.15) - 1 / (reference + 273.15))) \
                * (t1 - t0) / steps / 60
    return total


def table():
    with open("runs.csv", "w", encoding="utf-8", newline="\n") as file:
        file.write("# Written by ovens.py beside it. Hours; drift of TC-07 in K; worth of the coldest of TC-07 and TC-08.\n")
        file.write("run,day,metal,reference_degC,in_band_h,drift_K,zero_h,zero_80_h,zero_130_h,linear_h,worst_h,"
                   "without_h\n")
        for name, begin, metal, *_ in RUNS:
            day = datetime.date.fromisoformat(begin[:10])
            if day <= LAST_GOOD:
                continue
            rows = read(name)
            drift = FOUND_ERROR * (day - LAST_GOOD).days / (FOUND - LAST_GOOD).days
            reference, low, high = (177, 172, 182) if metal == "6061" else (149, 144, 154)
            less = lambda kelvins: [(t, a - kelvins, b) for t, a, b in rows]
            alone = [(t, b, b) for t, a, b in rows]
            values = [in_band(rows, low, high), drift, worth(rows, reference, 115), worth(rows, reference, 80),
                      worth(rows, reference, 130), worth(less(drift), reference, 115),
                      worth(less(FOUND_ERROR), reference, 115), worth(alone, reference, 115)]
            file.write("%s,%s,%s,%d,%s\n" % (name, day, metal, reference, ",".join("%.6f" % v for v in values)))


{"records": records, "table": table}[sys.argv[1]]()
