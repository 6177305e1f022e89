#!/usr/bin/env python3
"""Fifty chairs at once, on this machine alone: each logs, asks what if, and plans new cases.

Usage: scripts/trial-load.py [--chairs N] [--seconds S] [--postgresql] [--uses N] [--json FILE]
       (50 chairs, 120 s; 15 minutes at most; with --postgresql on a server of its own that is thrown away at the end)
       With --uses N the record holds that many uses before; that needs, once:
       mvn -Pvalidation -pl validation -am -Dmaven.test.skip=true package
"""
import argparse
import json
import os
import random
import re
import subprocess
import threading
import time
import urllib.parse

from practice import HOME, JAR, Practice
from postgres import Postgres

options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
options.add_argument("--chairs", type=int, default=50)
options.add_argument("--seconds", type=float, default=120)
options.add_argument("--postgresql", action="store_true", help="on PostgreSQL instead of a file")
options.add_argument("--uses", type=int, default=0, help="uses in the record before")
options.add_argument("--json", help="writes the figures there too")
wanted = options.parse_args()
EVERY = {"log": 30, "what-if": 20, "plan": 180, "drawer": 15, "day": 30}
LIMIT_MS = {"log": 250, "drawer": 250, "what-if": 500, "plan": 2000, "day": 2000}
times = {kind: [] for kind in EVERY}
failed, acknowledged, guard = [], [], threading.Lock()
server = Postgres() if wanted.postgresql else None
practice = Practice(database=server.url if server else None)


def cases(query):
    """Two hundred cases: one after the other a little thicker."""
    fields = urllib.parse.parse_qsl(query, keep_blank_values=True)
    all_cases = []
    for number in range(200):
        changed = []
        for name, value in fields:
            if name == "case":
                value = "K-%d" % (8000 + number)
            elif name == "layer_typical" and re.fullmatch(r"[0-9.]+", value):
                value = "%.3f" % (float(value) * (1 + number / 1000))
            elif name in ("layer_low", "layer_high"):
                value = ""
            changed.append((name, value))
        all_cases.append(urllib.parse.urlencode(changed))
    return all_cases


def timed(kind, work):
    begun = time.monotonic()
    try:
        sound = work()
    except OSError as lost:
        sound = False
        with guard:
            failed.append(kind + ": " + str(lost))
    with guard:
        times[kind].append(1000 * (time.monotonic() - begun))
        if not sound:
            failed.append(kind)


def chair(number, all_cases, items, end):
    chance = random.Random(number)
    case = chance.choice(all_cases)
    due = {kind: time.monotonic() + chance.uniform(0, every) for kind, every in EVERY.items()}

    def logged():
        entry = practice.log(chance.choice(items))
        if entry:
            with guard:
                acknowledged.append(entry)
        return entry is not None

    while time.monotonic() < end:
        kind = min(due, key=due.get)
        time.sleep(max(0, min(due[kind], end) - time.monotonic()))
        if time.monotonic() >= end:
            return
        due[kind] += EVERY[kind]
        if kind == "plan":
            case = chance.choice(all_cases)
        path = {"what-if": "/plan/what-if?" + case, "plan": "/plan?" + case,
                "drawer": "/drawer", "day": "/"}.get(kind)
        timed(kind, logged if kind == "log" else lambda: practice.get(path)[0] < 500)


def fill(uses):
    """Puts that many uses into the practice, while nobody serves it."""
    bench = sorted((HOME / "validation" / "target").glob("kerfwright-validation-*.jar"))
    if not bench:
        raise SystemExit("build the benches first, as the head of this script says")
    parts = [str(bench[-1]), str(JAR), str(JAR.parent / "lib" / "*")]
    practice.start()
    practice.stop()
    subprocess.run(
        ["java", "-Xmx700m", "-cp", os.pathsep.join(parts), "kerfwright.validation.ManyUses",
         str(uses), practice.database or str(practice.data)],
        check=True, timeout=7200)


def memory_mb():
    for line in open("/proc/%d/status" % practice.process.pid):
        if line.startswith("VmRSS"):
            return int(line.split()[1]) // 1024
    return 0


try:
    if wanted.uses:
        fill(min(wanted.uses, 20_000_000))
    practice.start()
    query = re.search(r'href="/plan\?([^"]+)"', practice.get("/")[1]).group(1)
    all_cases = cases(query.replace("&amp;", "&"))
    items = practice.items()
    end = time.monotonic() + min(wanted.seconds, 900)
    before = memory_mb()
    chairs = [threading.Thread(target=chair, args=(number, all_cases, items, end))
              for number in range(min(wanted.chairs, 200))]
    for one in chairs:
        one.start()
    for one in chairs:
        one.join()
    lost = [one for one in acknowledged if not practice.stands(one)]
    slow = False
    figures = {"bench": "load/1", "cores": os.cpu_count(), "chairs": len(chairs),
               "database": "PostgreSQL" if server else "SQLite", "usesBefore": wanted.uses,
               "seconds": wanted.seconds, "kinds": {}}
    for kind, all_ms in times.items():
        all_ms.sort()
        if all_ms:
            p95 = all_ms[min(len(all_ms) - 1, int(0.95 * len(all_ms)))]
            slow |= p95 > LIMIT_MS[kind]
            figures["kinds"][kind] = {
                "calls": len(all_ms), "medianMs": round(all_ms[len(all_ms) // 2], 1),
                "p95Ms": round(p95, 1), "mostMs": round(all_ms[-1], 1), "limitMs": LIMIT_MS[kind]}
            print("%-8s %5d  median %6.0f ms  p95 %6.0f ms  (limit %d)"
                  % (kind, len(all_ms), all_ms[len(all_ms) // 2], p95, LIMIT_MS[kind]))
    after = memory_mb()
    figures.update(failed=len(failed), acknowledged=len(acknowledged), lost=len(lost),
                   memoryMbBefore=before, memoryMbAfter=after)
    if wanted.json:
        with open(wanted.json, "w", encoding="utf-8") as out:
            json.dump(figures, out, indent=2)
            out.write("\n")
    print("%d failed, %d acknowledged, %d lost, memory %d MB before, %d MB after"
          % (len(failed), len(acknowledged), len(lost), before, after))
    raise SystemExit(1 if failed or lost else 2 if slow else 0)
finally:
    practice.clear()
    if server:
        server.clear()
