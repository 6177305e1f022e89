package kerfwright.app.storage;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * A PostgreSQL server of our own on a free port of loopback, from binaries on the class path; those
 * of the machine are the fallback. The server refuses root, so that root runs it as another user.
 * It is thrown away at the end and does not wait for the disk: no test here cuts its power.
 */
public final class PostgresOfTests {
  private static final String ARCHIVE = "/postgres-linux-x86_64.txz";
  private static final Duration LONGEST = Duration.ofMinutes(3);
  private static @Nullable PostgresOfTests running;
  private static @Nullable Throwable impossible;
  private static @Nullable Path unpacked;
  private static int made;

  private final int port;

  private PostgresOfTests(int port) {
    this.port = port;
  }

  /** The JDBC URL of a new, empty database; skips the test where impossible, unless demanded. */
  public static synchronized String newDatabase() {
    if (running == null && impossible == null) {
      try {
        running = startOnceMore();
      } catch (IOException | InterruptedException | RuntimeException failed) {
        impossible = failed;
      }
    }
    if (running == null) {
      if ("1".equals(System.getenv("KERFWRIGHT_REQUIRE_POSTGRES"))) {
        Assertions.fail("KERFWRIGHT_REQUIRE_POSTGRES is 1, but no server starts", impossible);
      }
      Assumptions.abort("no PostgreSQL can be started here: " + impossible);
    }
    String name = "drawer" + ++made;
    String admin = "jdbc:postgresql://localhost:" + running.port + "/postgres?user=kerfwright";
    try (var connection = java.sql.DriverManager.getConnection(admin);
        var statement = connection.createStatement()) {
      statement.execute("CREATE DATABASE " + name);
    } catch (java.sql.SQLException failed) {
      throw new IllegalStateException(failed);
    }
    return "jdbc:postgresql://localhost:" + running.port + "/" + name + "?user=kerfwright";
  }

  /** Between finding a free port and taking it another process may be quicker. */
  private static PostgresOfTests startOnceMore() throws IOException, InterruptedException {
    try {
      return start();
    } catch (IllegalStateException portTaken) {
      return start();
    }
  }

  private static PostgresOfTests start() throws IOException, InterruptedException {
    return start("kerfwright", Map.of(), List.of());
  }

  /**
   * The port of a server of its own, with files put into its folder, readable by it alone, and
   * options that find them there. Its superuser comes in over the network without a password.
   */
  static synchronized int another(String superuser, Map<String, byte[]> files, List<String> options)
      throws IOException, InterruptedException {
    return start(superuser, files, options).port;
  }

  private static PostgresOfTests start(
      String superuser, Map<String, byte[]> files, List<String> options)
      throws IOException, InterruptedException {
    Path home = Files.createTempDirectory("kerfwright-postgres");
    Path bin = unpacked == null ? binaries(home) : unpacked;
    unpacked = bin;
    Path given = home.resolve("given");
    Files.createDirectory(given);
    for (Map.Entry<String, byte[]> one : files.entrySet()) {
      Path file = Files.write(given.resolve(one.getKey()), one.getValue());
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
    }
    Path data = home.resolve("data");
    Files.createDirectory(data);
    boolean root = "root".equals(System.getProperty("user.name"));
    if (root) {
      Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwxr-xr-x"));
      run(home, List.of("chown", "-R", "65534:65534", data.toString(), given.toString()));
    }
    List<String> as =
        root ? List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups") : List.of();
    run(
        home,
        with(
            as,
            bin.resolve("initdb").toString(),
            "-D",
            data.toString(),
            "-U",
            superuser,
            "-A",
            "trust",
            "-E",
            "UTF8",
            "--no-locale"));
    int port;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }
    List<String> more =
        options.stream().map(one -> one.replace("{given}", given.toString())).toList();
    Process server =
        new ProcessBuilder(
                with(
                    with(as, bin.resolve("postgres").toString()),
                    more,
                    "-D",
                    data.toString(),
                    "-p",
                    Integer.toString(port),
                    "-c",
                    "listen_addresses=localhost",
                    "-c",
                    "fsync=off",
                    "-c",
                    "unix_socket_directories="))
            .directory(data.toFile())
            .redirectErrorStream(true)
            .redirectOutput(home.resolve("log").toFile())
            .start();
    Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(server, home)));
    String url = "jdbc:postgresql://localhost:" + port + "/postgres?user=" + superuser;
    long end = System.nanoTime() + LONGEST.toNanos();
    while (server.isAlive() && System.nanoTime() < end) {
      try {
        java.sql.DriverManager.getConnection(url).close();
        return new PostgresOfTests(port);
      } catch (java.sql.SQLException notYet) {
        Thread.sleep(200);
      }
    }
    server.destroyForcibly();
    throw new IllegalStateException("no answer: " + Files.readString(home.resolve("log")));
  }

  private static Path binaries(Path home) throws IOException {
    try (InputStream archive = PostgresOfTests.class.getResourceAsStream(ARCHIVE)) {
      if (archive != null && "amd64".equals(System.getProperty("os.arch"))) {
        unpack(archive, home);
        return home.resolve("bin");
      }
    }
    try (Stream<Path> versions = Files.list(Path.of("/usr/lib/postgresql"))) {
      return versions
          .map(version -> version.resolve("bin"))
          .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
          .max(Comparator.naturalOrder())
          .orElseThrow(() -> new IOException("no server under /usr/lib/postgresql"));
    }
  }

  private static void unpack(InputStream archive, Path home) throws IOException {
    try (TarArchiveInputStream tar =
        new TarArchiveInputStream(new XZCompressorInputStream(archive))) {
      for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
        Path to = home.resolve(entry.getName()).normalize();
        if (entry.isDirectory()) {
          Files.createDirectories(to);
          continue;
        }
        Files.createDirectories(to.getParent());
        if (entry.isSymbolicLink()) {
          Files.createSymbolicLink(to, Path.of(entry.getLinkName()));
        } else {
          Files.copy(tar, to);
          if ((entry.getMode() & 0111) != 0) {
            Files.setPosixFilePermissions(to, PosixFilePermissions.fromString("rwxr-xr-x"));
          }
        }
      }
    }
  }

  private static List<String> with(List<String> as, List<String> more, String... command) {
    List<String> all = new ArrayList<>(as);
    all.addAll(more);
    all.addAll(List.of(command));
    return all;
  }

  private static List<String> with(List<String> as, String... command) {
    List<String> all = new ArrayList<>(as);
    all.addAll(List.of(command));
    return all;
  }

  private static void run(Path home, List<String> command)
      throws IOException, InterruptedException {
    Path log = home.resolve("set-up.log");
    Process process =
        new ProcessBuilder(command)
            .directory(home.toFile())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    if (!process.waitFor(LONGEST.toSeconds(), TimeUnit.SECONDS) || process.exitValue() != 0) {
      process.destroyForcibly();
      throw new IOException(command + " failed: " + Files.readString(log));
    }
  }

  /**
   * At once, and without waiting until thousands of files are deleted: what is in it is not kept.
   */
  private static void stop(Process server, Path home) {
    try {
      new ProcessBuilder("kill", "-QUIT", Long.toString(server.pid())).start().waitFor();
      if (!server.waitFor(5, TimeUnit.SECONDS)) {
        server.destroyForcibly();
      }
      new ProcessBuilder("rm", "-rf", home.toString()).start();
    } catch (IOException | InterruptedException leftBehind) {
      // a temporary folder stays; the machine clears it
    }
  }
}
