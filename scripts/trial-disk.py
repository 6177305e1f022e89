#!/usr/bin/env python3
"""Lets the practice's file grow no further, as on a full disk: nothing acknowledged may be lost.

The limit is that of the process (RLIMIT_FSIZE); no disk is filled.
Usage: scripts/trial-disk.py [--uses N]      (3000 uses, ten minutes at most)
"""
import argparse
import resource
import signal
import time

from practice import Practice, run

options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
options.add_argument("--uses", type=int, default=3000)
wanted = options.parse_args()
end = time.monotonic() + 600
practice = Practice()
wrong, acknowledged = [], []
try:
    practice.start()
    practice.stop()
    # the database's library is unpacked at the start and needs two megabytes itself
    room = max((practice.data / "kerfwright.db").stat().st_size + 256 * 1024, 3 << 20)

    def little_room():
        signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (room, room))

    practice.before = little_room
    practice.start()
    item = practice.items()[0]
    refused = ""
    for _ in range(wanted.uses):
        entry = practice.log(item)
        if entry is None or time.monotonic() > end:
            status, refused = practice.ask("POST", "/chairside/log", "[]", "application/json")
            break
        acknowledged.append(entry)
    status, page = practice.form("/settings/person", version="1", initials="XY", role="assistant")
    if status == 500:
        wrong.append("a full disk is called a fault of the program")
    practice.kill()
    practice.before = None
    practice.start()
    lost = [one for one in acknowledged if not practice.stands(one)]
    practice.stop()
    code, said = run("record", "verify", "--data", str(practice.data))
    if lost or code:
        wrong.append("%d lost; %s" % (len(lost), said))
    print("%d uses acknowledged until the disk was full, %d lost, answer then %d"
          % (len(acknowledged), len(lost), status))
    print("\n".join(wrong))
    raise SystemExit(1 if wrong else 0)
finally:
    practice.clear()
