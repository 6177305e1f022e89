"""A PostgreSQL of the trials' own, on loopback, thrown away at the end."""
import glob
import os
import pathlib
import shutil
import socket
import subprocess
import tempfile
import time


class Postgres:
    """A server in a folder of its own; it refuses root, so root runs it as nobody."""

    def __init__(self):
        found = sorted(glob.glob("/usr/lib/postgresql/*/bin/initdb"))
        initdb = shutil.which("initdb") or (found[-1] if found else None)
        if not initdb:
            raise SystemExit("no initdb: install a PostgreSQL server, or leave out --postgresql")
        self.bin = pathlib.Path(initdb).resolve().parent
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="kerfwright-postgres-"))
        self.root = os.geteuid() == 0
        if self.root:
            os.chown(self.folder, 65534, 65534)
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]
        subprocess.run(
            self.as_user("initdb", "-D", str(self.folder / "data"), "-U", "kerfwright",
                         "-A", "trust", "-E", "UTF8", "--no-locale"),
            check=True, stdout=subprocess.DEVNULL, cwd=self.folder)
        log = open(self.folder / "log", "ab")
        self.server = subprocess.Popen(
            self.as_user("postgres", "-D", str(self.folder / "data"), "-p", str(self.port),
                         "-c", "listen_addresses=localhost", "-c", "unix_socket_directories="),
            stdout=log, stderr=log, cwd=self.folder)
        end = time.monotonic() + 60
        while time.monotonic() < end:
            try:
                socket.create_connection(("127.0.0.1", self.port), 2).close()
                return
            except OSError:
                time.sleep(0.2)
        raise SystemExit("no PostgreSQL; see " + str(self.folder / "log"))

    def as_user(self, program, *arguments):
        own = ["setpriv", "--reuid=65534", "--regid=65534", "--clear-groups"] if self.root else []
        return own + [str(self.bin / program)] + list(arguments)

    @property
    def url(self):
        return "jdbc:postgresql://localhost:%d/postgres?user=kerfwright" % self.port

    def clear(self):
        self.server.send_signal(2)
        try:
            self.server.wait(60)
        except subprocess.TimeoutExpired:
            self.server.kill()
        shutil.rmtree(self.folder, ignore_errors=True)
