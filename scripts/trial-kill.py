#!/usr/bin/env python3
"""Kills the program again and again while uses are logged, and looks for each that was acknowledged.

The process is killed, the machine is not: what a cut of power does to a disk is not tried here.
Usage: scripts/trial-kill.py [--kills N] [--minutes M]      (20 kills, 15 minutes at most)
"""
import argparse
import random
import threading
import time

from practice import Practice, run

options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
options.add_argument("--kills", type=int, default=20)
options.add_argument("--minutes", type=float, default=15)
options.add_argument("--seed", type=int, default=1)
wanted = options.parse_args()
chance = random.Random(wanted.seed)
end = time.monotonic() + 60 * wanted.minutes
practice = Practice()
acknowledged, kills = [], 0
try:
    while kills < min(wanted.kills, 1000) and time.monotonic() < end:
        practice.start()
        items = practice.items()
        over = threading.Event()

        def write():
            while not over.is_set():
                try:
                    entry = practice.log(chance.choice(items))
                except Exception:
                    return
                if entry:
                    acknowledged.append(entry)

        writers = [threading.Thread(target=write) for _ in range(3)]
        for one in writers:
            one.start()
        time.sleep(chance.uniform(0.3, 2.0))
        practice.kill()
        over.set()
        for one in writers:
            one.join(30)
        kills += 1
    code, said = run("record", "verify", "--data", str(practice.data))
    practice.start()
    lost = [one for one in acknowledged if not practice.stands(one)]
    print("%d kills, %d uses acknowledged, %d lost" % (kills, len(acknowledged), len(lost)))
    print(said.strip())
    raise SystemExit(1 if lost or code else 0)
finally:
    practice.clear()
