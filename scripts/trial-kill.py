#!/usr/bin/env python3
"""Kills the program again and again while uses are logged, and looks for each that was acknowledged.

The process is killed, the machine is not: what a cut of power does to a disk is not tried here.
Usage: scripts/trial-kill.py [--kills N] [--minutes M] [--postgresql] [--json FILE]
       (20 kills, 15 minutes at most, on SQLite; with --postgresql two processes share one server,
       one or the other is killed, and the other must go on)
"""
import argparse
import json
import pathlib
import random
import threading
import time

from postgres import Postgres
from practice import Practice

options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
options.add_argument("--kills", type=int, default=20)
options.add_argument("--minutes", type=float, default=15)
options.add_argument("--seed", type=int, default=1)
options.add_argument("--postgresql", action="store_true", help="two processes on one PostgreSQL")
options.add_argument("--json", help="puts the figures there too, beside those of the other database")
wanted = options.parse_args()
chance = random.Random(wanted.seed)
end = time.monotonic() + 60 * wanted.minutes
server = Postgres() if wanted.postgresql else None
practices = [Practice(database=server.url) for _ in range(2)] if server else [Practice()]
acknowledged, kills, stalled = [], 0, 0


def write(practice, items, over, mine):
    while not over.is_set():
        try:
            entry = practice.log(chance.choice(items))
        except Exception:
            return
        if entry:
            mine.append(entry)


try:
    for one in practices:
        one.start()
    items = practices[0].items()
    while kills < min(wanted.kills, 1000) and time.monotonic() < end:
        over = threading.Event()
        said = [[] for _ in practices]
        writers = [threading.Thread(target=write, args=(one, items, over, mine))
                   for one, mine in zip(practices, said) for _ in range(2 if server else 3)]
        for one in writers:
            one.start()
        time.sleep(chance.uniform(0.3, 2.0))
        victim = chance.randrange(len(practices))
        practices[victim].kill()
        kills += 1
        if server:
            others = said[1 - victim]
            before = len(others)
            patience = time.monotonic() + 30
            while len(others) == before and time.monotonic() < patience:
                time.sleep(0.05)
            stalled += len(others) == before
        over.set()
        for one in writers:
            one.join(30)
        for mine in said:
            acknowledged.extend(mine)
        practices[victim].start()
    if not server:
        practices[0].stop()
    code, told = practices[0].run("record", "verify")
    if not server:
        practices[0].start()
    lost = [one for one in acknowledged if not practices[0].stands(one)]
    print("%d kills, %d uses acknowledged, %d lost" % (kills, len(acknowledged), len(lost)))
    if server:
        print("after %d of them the other process stood still" % stalled)
    print(told.strip())
    if wanted.json:
        path = pathlib.Path(wanted.json)
        figures = json.loads(path.read_text()) if path.is_file() else {"bench": "kill/1"}
        figures["PostgreSQL" if server else "SQLite"] = {
            "processes": len(practices), "kills": kills, "acknowledged": len(acknowledged),
            "lost": len(lost), "otherStoodStill": stalled, "chainHolds": code == 0}
        path.write_text(json.dumps(figures, indent=2) + "\n")
    raise SystemExit(1 if lost or code or stalled else 0)
finally:
    for one in practices:
        one.clear()
    if server:
        server.clear()
