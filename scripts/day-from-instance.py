#!/usr/bin/env python3
"""Writes a benchmark instance as a day file of contract day/1.

usage: day-from-instance.py INSTANCE.json > DAY.yaml
Types become t0, t1, ... and cases A0, A1, ... in the order of the instance; minute 0 is 08:00.
"""
import json
import sys

day = json.load(open(sys.argv[1]))


def clock(minute):
    return '"%02d:%02d"' % divmod(8 * 60 + minute, 60)


print(f"# Benchmark instance, {day['n']} cases, seed {day['seed']}; all data invented")
print('start: "08:00"')
for name, key in (("length_min", "day"), ("cleaning_min", "clean"), ("load_min", "cycle"),
                  ("load_grid_min", "grid"), ("sterilisers", "sterilisers"), ("load_capacity", "capacity")):
    print(f"{name}: {day[key]}")
print("instruments:")
for k, one in enumerate(day["types"]):
    print(f"  - {{type: t{k}, life: {one['life']}, used: {one['used']}}}")
print("appointments:")
for i, one in enumerate(day["cases"]):
    needs = ", ".join(f"t{k}" for k in one["types"])
    print(f"  - {{id: A{i}, start: {clock(one['start'])}, end: {clock(one['end'])}, needs: [{needs}]}}")
