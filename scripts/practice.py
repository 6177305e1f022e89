"""What the trial scripts share: a practice in a folder of its own, started, asked, killed."""
import http.client
import json
import os
import pathlib
import shutil
import signal
import socket
import subprocess
import tempfile
import time
import urllib.parse
import uuid

HOME = pathlib.Path(__file__).resolve().parent.parent
JAR = HOME / "app" / "target" / "kerfwright-app.jar"


def command(*arguments):
    """The program's command line; KERFWRIGHT_COMMAND stands before the arguments instead."""
    own = os.environ.get("KERFWRIGHT_COMMAND")
    if own:
        return own.split() + list(arguments)
    if not JAR.is_file():
        raise SystemExit("build first: ./kerfwright --help")
    java = ["java", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-jar", str(JAR)]
    return java + list(arguments)


def run(*arguments, surrounding=None):
    """Runs a command to its end; gives its exit code and what it said."""
    done = subprocess.run(
        command(*arguments), capture_output=True, text=True, timeout=300, env=surrounding)
    return done.returncode, done.stdout + done.stderr


class Practice:
    """A practice served from a folder, or from the PostgreSQL of that URL."""

    def __init__(self, folder=None, demo=True, before=None, database=None):
        self.database = database
        self.own = folder is None
        self.folder = pathlib.Path(folder or tempfile.mkdtemp(prefix="kerfwright-trial-"))
        self.demo = demo
        self.before = before
        self.process = None
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]

    @property
    def data(self):
        return self.folder / "data"

    def place(self):
        return [] if self.database else ["--data", str(self.data)]

    def surrounding(self):
        return dict(os.environ, KERFWRIGHT_DATABASE=self.database) if self.database else None

    def run(self, *arguments):
        """Runs a command on this practice to its end; gives its exit code and what it said."""
        return run(*arguments, *self.place(), surrounding=self.surrounding())

    def start(self, patience=300):
        wanted = ["serve", "--port", str(self.port)] + self.place()
        if self.demo:
            wanted.append("--demo")
        log = open(self.folder / "serve.log", "ab")
        self.process = subprocess.Popen(
            command(*wanted), stdout=log, stderr=log, preexec_fn=self.before, env=self.surrounding())
        end = time.monotonic() + patience
        while time.monotonic() < end:
            if self.process.poll() is not None:
                raise SystemExit("it ended at the start; see " + str(self.folder / "serve.log"))
            try:
                if self.get("/chairside")[0] == 200:
                    return self
            except OSError:
                time.sleep(0.2)
        raise SystemExit("it did not answer within %d s" % patience)

    def kill(self):
        """Ends the process at once, as kill -9 does. The machine goes on: no power is cut."""
        self.process.send_signal(signal.SIGKILL)
        self.process.wait(30)

    def stop(self):
        if self.process and self.process.poll() is None:
            self.process.terminate()
            try:
                self.process.wait(60)
            except subprocess.TimeoutExpired:
                self.kill()

    def clear(self):
        self.stop()
        if self.own:
            shutil.rmtree(self.folder, ignore_errors=True)

    def ask(self, method, path, body=None, kind=None, patience=60):
        line = http.client.HTTPConnection("localhost", self.port, timeout=patience)
        try:
            headers = {"Origin": "http://localhost:%d" % self.port}
            if kind:
                headers["Content-Type"] = kind
            start = self.data / "start-token"
            if start.is_file():
                headers["Cookie"] = "kerfwright-start=" + start.read_text().strip()
            line.request(method, path, body, headers)
            answer = line.getresponse()
            return answer.status, answer.read().decode("utf-8", "replace")
        finally:
            line.close()

    def get(self, path, patience=60):
        return self.ask("GET", path, patience=patience)

    def form(self, path, **fields):
        body = urllib.parse.urlencode(fields)
        return self.ask("POST", path, body, "application/x-www-form-urlencoded")

    def items(self):
        """Ids of instruments that can be logged."""
        page = self.get("/drawer?state=clean")[1]
        mark = "/drawer/item/"
        found = [page[at + len(mark):at + len(mark) + 36] for at in places(page, mark)]
        return [one for one in dict.fromkeys(found) if one.count("-") == 4]

    def log(self, item, case="K-1"):
        """Logs one use as the chair does; gives its id where the record says that it stands."""
        entry = {
            "id": str(uuid.uuid4()), "case": case, "tooth": 16, "run": str(uuid.uuid4()),
            "step": 1, "item": item, "by": "AB", "setRpm": 100000, "totalSeconds": 5,
            "mm3": {"enamel": 1}, "at": time.strftime("%Y-%m-%dT%H:%M:%SZ", time.gmtime()),
        }
        status, text = self.ask(
            "POST", "/chairside/log", json.dumps([entry]), "application/json")
        stands = status == 200 and json.loads(text)[0]["stands"]
        return entry["id"] if stands else None

    def stands(self, entry):
        return self.get("/records/" + entry)[0] == 200


def places(text, mark):
    at = text.find(mark)
    while at >= 0:
        yield at
        at = text.find(mark, at + 1)
