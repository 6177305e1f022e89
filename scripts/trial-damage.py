#!/usr/bin/env python3
"""Damages copies of a practice's file in many ways; each must be noticed, or have changed nothing.

Usage: scripts/trial-damage.py [--rounds N] [--seed S]      (10 rounds of each kind, 10 minutes at most)
"""
import argparse
import random
import shutil
import sqlite3
import time

from practice import Practice, run

options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
options.add_argument("--rounds", type=int, default=10)
options.add_argument("--seed", type=int, default=1)
wanted = options.parse_args()
chance = random.Random(wanted.seed)
end = time.monotonic() + 600
practice = Practice()


def rubbish(file):
    with open(file, "r+b") as raw:
        size = raw.seek(0, 2)
        for _ in range(20):
            raw.seek(chance.randrange(size))
            raw.write(bytes(chance.randrange(256) for _ in range(64)))


def cut(file):
    with open(file, "r+b") as raw:
        raw.truncate(chance.randrange(1, raw.seek(0, 2)))


def emptied(file):
    with open(file, "wb"):
        pass


def older(file):
    line = sqlite3.connect(file)
    with line:
        line.execute("DELETE FROM cut_record WHERE number = (SELECT max(number) FROM cut_record)")
        line.execute("UPDATE cut_record_end SET (number, hash) ="
                     " (SELECT number, hash FROM cut_record ORDER BY number DESC LIMIT 1)")
    line.close()


def content(file):
    line = sqlite3.connect("file:%s?mode=ro" % file, uri=True)
    try:
        return [line.execute("SELECT * FROM %s ORDER BY 1" % table).fetchall()
                for table in ("cut_record", "stock_entry", "steriliser_load", "ledger")]
    finally:
        line.close()


missed = []
try:
    practice.start()
    item = practice.items()[0]
    for _ in range(5):
        practice.log(item)
    practice.stop()
    file = practice.data / "kerfwright.db"
    sound = practice.folder / "sound.db"
    shutil.copy(file, sound)
    before = content(sound)
    tried = 0
    for kind in (rubbish, cut, emptied, older):
        for _ in range(1 if kind in (emptied, older) else min(wanted.rounds, 100)):
            if time.monotonic() > end:
                break
            for beside in practice.data.glob("kerfwright.db-*"):
                beside.unlink()
            shutil.copy(sound, file)
            kind(file)
            tried += 1
            code, said = run("doctor", "--data", str(practice.data))
            noticed = "damaged" in said or "cannot be" in said or "broken" in said \
                or "missing" in said
            try:
                same = content(file) == before
            except (sqlite3.Error, UnicodeDecodeError):
                same = False
            if not same and not noticed:
                missed.append(kind.__name__ + ": " + said)
    print("%d damaged files, %d not noticed" % (tried, len(missed)))
    for one in missed:
        print(one)
    raise SystemExit(1 if missed else 0)
finally:
    practice.clear()
