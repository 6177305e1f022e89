package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.people.Trail;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The documented set-up of a shared PostgreSQL on a real server: its certificates by the commands
 * of docs/network.md, its roles by deploy/database.sh, its rules by deploy/pg_hba.conf. Only the
 * name of the server is another, and the superuser comes in over loopback to run the set-up.
 */
class DatabaseTlsTest {
  private static final Path ROOT = root();
  private static final String INSUFFICIENT_PRIVILEGE = "42501";

  @TempDir private static Path folder;
  private static int port;
  private static Path secret;

  private static Path root() {
    Path here = Path.of("").toAbsolutePath();
    return Files.isDirectory(here.resolve("docs")) ? here : here.getParent();
  }

  @BeforeAll
  static void setUpAsDocumented() throws Exception {
    Assumptions.assumeTrue(
        Files.isExecutable(Path.of("/usr/bin/openssl"))
            || "1".equals(System.getenv("KERFWRIGHT_REQUIRE_POSTGRES")),
        "no openssl on this machine");
    secret = certificates();
    String rules = Files.readString(ROOT.resolve("deploy/pg_hba.conf"));
    String forTheSetUp = "host all postgres 127.0.0.1/32 trust\nhost all postgres ::1/128 trust\n";
    port =
        PostgresOfTests.another(
            "postgres",
            Map.of(
                "crt", Files.readAllBytes(secret.resolve("database.crt")),
                "key", Files.readAllBytes(secret.resolve("database.key")),
                "hba", (rules + forTheSetUp).getBytes(java.nio.charset.StandardCharsets.UTF_8)),
            List.of(
                "-c",
                "ssl=on",
                "-c",
                "ssl_cert_file={given}/crt",
                "-c",
                "ssl_key_file={given}/key",
                "-c",
                "ssl_min_protocol_version=TLSv1.2",
                "-c",
                "hba_file={given}/hba"));
    roles();
    try (Database owner = Database.server(url("kerfwright_owner", "owner", "localhost", secret))) {
      Rights.give(owner, "kerfwright");
    }
  }

  /** The commands of the document, for a server of another name. */
  private static Path certificates() throws IOException, InterruptedException {
    Matcher block =
        Pattern.compile("(?s)\\n    (mkdir -m 700 deploy/secret.*?)\\n    cd \\.\\.")
            .matcher(Files.readString(ROOT.resolve("docs/network.md")));
    assertTrue(block.find(), "the commands of docs/network.md");
    Files.createDirectory(folder.resolve("deploy"));
    run(folder, block.group(1).replace("DNS:database", "DNS:localhost"));
    return folder.resolve("deploy/secret");
  }

  private static void run(Path here, String commands) throws IOException, InterruptedException {
    Path log = here.resolve("log");
    Process run =
        new ProcessBuilder("sh", "-ec", commands)
            .directory(here.toFile())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    assertTrue(run.waitFor(60, TimeUnit.SECONDS), commands);
    assertEquals(0, run.exitValue(), Files.readString(log));
  }

  private static void roles() throws Exception {
    Matcher sql =
        Pattern.compile("(?s)<<'SQL'\\n(.*?)\\nSQL\\n")
            .matcher(Files.readString(ROOT.resolve("deploy/database.sh")));
    assertTrue(sql.find(), "the statements of deploy/database.sh");
    String all =
        sql.group(1)
            .replace(":'password'", "'" + password("kerfwright") + "'")
            .replace(":'owner'", "'" + password("owner") + "'");
    String superuser = "jdbc:postgresql://localhost:" + port + "/postgres?user=postgres";
    try (Connection connection = DriverManager.getConnection(superuser);
        Statement statement = connection.createStatement()) {
      for (String one : all.split(";\\s*")) {
        statement.execute(one);
      }
    }
  }

  private static String password(String whose) throws IOException {
    return Files.readString(secret.resolve(whose + "_password")).strip();
  }

  /** As deploy/environment.example has it. */
  private static String url(String role, String whose, String host, Path trusted)
      throws IOException {
    return "jdbc:postgresql://%s:%d/kerfwright?user=%s&password=%s&sslmode=verify-full&sslrootcert=%s"
        .formatted(host, port, role, password(whose), trusted.resolve("ca.crt"));
  }

  private static String working() throws IOException {
    return url("kerfwright", "kerfwright", "localhost", secret);
  }

  private static String refused(String sql) throws Exception {
    try (Connection connection = DriverManager.getConnection(working());
        Statement statement = connection.createStatement()) {
      return assertThrows(SQLException.class, () -> statement.execute(sql), sql).getSQLState();
    }
  }

  @Test
  void aRoleThatOwnsNothingWorksOverTls() throws Exception {
    try (Database practice = Database.server(working())) {
      DrawerService drawer =
          new DrawerService(
              new StoredDrawer(practice),
              new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(5)),
              Clock.systemUTC());
      StockItem item =
          StockItem.fresh(
              drawer.newId(), "D1", new DrawerFields(Map.of("iso", "806 314 197 534 014")));
      drawer.add(List.of(item), "");
      Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
      Trail trail = new Trail(practice);
      trail.add(new Trail.Entry(now, "AB", Trail.Act.SAW, "GET /records K-1"));
      assertTrue(trail.check().holds());
      String tls =
          practice
              .sql()
              .one(
                  String.class,
                  "SELECT version FROM pg_stat_ssl WHERE pid = pg_backend_pid() AND ssl")
              .orElse("no TLS");
      assertTrue(tls.matches("TLSv1\\.[23]"), tls);
      assertEquals(
          0,
          practice
              .sql()
              .number("SELECT count(*) FROM pg_class WHERE relowner = current_user::regrole"),
          "owns something");
    }
  }

  @Test
  void itMayNeitherChangeTheTablesNorWhatIsOnlyAddedTo() throws Exception {
    for (String sql :
        List.of(
            "UPDATE trail SET who = 'XX'",
            "DELETE FROM trail",
            "UPDATE cut_record SET hash = ''",
            "DELETE FROM cut_record",
            "UPDATE ledger SET line = ''",
            "DELETE FROM ledger",
            "TRUNCATE trail",
            "DROP TABLE trail",
            "ALTER TABLE stock_item ADD COLUMN more TEXT",
            "CREATE TABLE more (id INTEGER)",
            "DELETE FROM flyway_schema_history",
            "CREATE DATABASE more",
            "CREATE ROLE more",
            "COPY trail TO PROGRAM 'cat'")) {
      assertEquals(INSUFFICIENT_PRIVILEGE, refused(sql), sql);
    }
  }

  @Test
  void aCertificateOfAnotherAuthorityIsRefused() throws Exception {
    Path other = Files.createDirectory(folder.resolve("other"));
    run(
        other,
        "openssl req -x509 -newkey ec -pkeyopt ec_paramgen_curve:P-256 -nodes -days 2"
            + " -subj /CN=other -keyout ca.key -out ca.crt");
    assertNotReached(url("kerfwright", "kerfwright", "localhost", other));
  }

  @Test
  void aCertificateOfAnotherNameIsRefused() throws Exception {
    assertNotReached(url("kerfwright", "kerfwright", "127.0.0.1", secret));
  }

  @Test
  void withoutTlsOrToAnotherDatabaseNobodyGetsIn() throws Exception {
    assertNotReached(working().replace("sslmode=verify-full", "sslmode=disable"));
    assertNotReached(working().replace("/kerfwright?", "/postgres?"));
    assertNotReached(working().replace("password=", "password=0"));
  }

  private static void assertNotReached(String url) {
    BadInput refused = assertThrows(BadInput.class, () -> Database.server(url).close());
    String said = String.valueOf(refused.getMessage()) + refused.faults();
    Assertions.assertTrue(said.contains("cannot be opened"), said);
    assertFalse(said.contains("password="), said);
  }
}
