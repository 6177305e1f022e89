#!/usr/bin/env python3
"""A class of forty phones on this machine's network address: all answer a question at once, as JSON.

Usage: scripts/bench-class.py [--phones N] [--questions N]      (40 phones, 5 questions; 3 minutes at most)

Each phone also asks every second for what is new, as a browser does. Told are the time of one answer at the
phone, and how far the last answer of a question was behind the first.
"""
import argparse
import http.client
import json
import os
import re
import sys
import threading
import time

from practice import Practice

options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
options.add_argument("--phones", type=int, default=40)
options.add_argument("--questions", type=int, default=5)
wanted = options.parse_args()
END = time.monotonic() + 180
FORM = {"Content-Type": "application/x-www-form-urlencoded"}
practice = Practice()


def phone(host, port, method, path, body=None, cookie="x=1"):
    line = http.client.HTTPConnection(host, port, timeout=30)
    try:
        headers = dict(FORM, Origin="http://%s:%d" % (host, port), Cookie=cookie)
        line.request(method, path, body, headers)
        answer = line.getresponse()
        answer.read()
        return answer.status, answer.getheader("Set-Cookie", "").split(";")[0]
    finally:
        line.close()


def page(path):
    return practice.get(path)[1]


def form(path, body):
    line = http.client.HTTPConnection("localhost", practice.port, timeout=60)
    try:
        origin = "http://localhost:%d" % practice.port
        line.request("POST", path, body, dict(FORM, Origin=origin))
        answer = line.getresponse()
        answer.read()
        return answer.getheader("Location", "")
    finally:
        line.close()


def on():
    step = re.search(r'name="step" value="(\d+)"', page("/learn/class")).group(1)
    form("/learn/class/on", "step=" + step)


def share(values, part):
    ordered = sorted(values)
    return round(ordered[min(len(ordered) - 1, int(part * len(ordered)))], 1)


try:
    practice.start()
    topics = "&".join("topic=" + one for one in ("instruments", "layers", "handling", "choice"))
    made = form("/learn/sets", "class=1&seed=3&count=%d&%s" % (wanted.questions, topics))
    form("/learn/class", "set=" + made.split("=")[1])
    host, port, code = re.search(r"http://([0-9.]+):(\d+)/class/([A-Z]+)", page("/learn/class")).groups()
    port, door = int(port), "/class/" + code
    cookies = [phone(host, port, "POST", door + "/join", "alias=phone%d" % i)[1] for i in range(wanted.phones)]
    over, ms, behind, lost = threading.Event(), [], [], 0

    def asks(cookie):
        while not over.wait(1):
            phone(host, port, "GET", door + "/now?step=0", cookie=cookie)

    for cookie in cookies:
        threading.Thread(target=asks, args=(cookie,), daemon=True).start()
    for question in range(1, wanted.questions + 1):
        if time.monotonic() > END:
            raise SystemExit("not done within three minutes")
        on()
        together, done, guard = threading.Barrier(wanted.phones), [], threading.Lock()

        def answers(cookie, option):
            together.wait()
            begun = time.monotonic()
            status, _ = phone(host, port, "POST", door + "/answer", "n=%d&option=%d" % (question, option), cookie)
            ended = time.monotonic()
            with guard:
                ms.append(1000 * (ended - begun))
                done.append((ended, status))

        threads = [threading.Thread(target=answers, args=(one, i % 4)) for i, one in enumerate(cookies)]
        [one.start() for one in threads]
        [one.join() for one in threads]
        behind.append(1000 * (max(done)[0] - min(done)[0]))
        counted = int(re.search(r"(\d+) answered", page("/learn/class/live")).group(1))
        lost += wanted.phones - counted
        on()
    over.set()
    result = {
        "bench": "class", "command": "scripts/bench-class.py", "processors": os.cpu_count(),
        "otherLoad": round(os.getloadavg()[0], 1), "phones": wanted.phones, "questions": wanted.questions,
        "answerMs": {"p50": share(ms, 0.5), "p95": share(ms, 0.95), "max": share(ms, 1)},
        "lastBehindFirstMs": {"p50": share(behind, 0.5), "max": share(behind, 1)}, "lost": lost}
    print(json.dumps(result, indent=2))
    sys.exit(0 if lost == 0 else 1)
finally:
    practice.clear()
