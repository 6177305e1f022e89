#!/usr/bin/env python3
"""Leaves a practice as a clock a year ahead would have, and sees that backups go on and it is told.

Usage: scripts/trial-clock.py      (three minutes at most; no clock of this machine is touched)
"""
import sqlite3
import time

from practice import Practice, run

YEAR_US = 365 * 24 * 3600 * 1000000
practice = Practice()
wrong = []
try:
    practice.start()
    practice.stop()
    file = practice.data / "kerfwright.db"
    line = sqlite3.connect(file)
    with line:
        line.execute("UPDATE day_book SET at_micros = at_micros + %d" % YEAR_US)
    line.close()
    backups = practice.data / "backups"
    backups.mkdir(exist_ok=True)
    for one in backups.glob("*.zip"):
        one.unlink()
    ahead = time.strftime("kerfwright-%Y%m%d-1300.zip", time.localtime(time.time() + 365 * 86400))
    (backups / ahead).write_bytes(b"")
    code, said = run("doctor", "--data", str(practice.data))
    if "cannot be" not in said or "no backup" not in said:
        wrong.append("doctor says nothing of it: " + said)
    practice.start()
    end = time.monotonic() + 120
    while time.monotonic() < end and len(list(backups.glob("*.zip"))) < 2:
        time.sleep(1)
    if len(list(backups.glob("*.zip"))) < 2:
        wrong.append("no backup was made beside the one of the future")
    if "dated in the future" not in practice.get("/backup")[1]:
        wrong.append("the page says nothing of the backup of the future")
    if "clock" not in practice.get("/")[1]:
        wrong.append("Today says nothing of the clock")
    print("\n".join(wrong) or "a clock that was ahead stops nothing and is told")
    raise SystemExit(1 if wrong else 0)
finally:
    practice.clear()
