package kerfwright.app.security;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.UUID;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.people.Authenticators;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes of an app: the published ones, how long each is taken, and that none is taken twice. */
class OneTimeCodesTest {
  /** The key of RFC 6238, appendix B, for SHA-1: "12345678901234567890", as Base32. */
  private static final String PUBLISHED_KEY = "GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ";

  private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");

  @TempDir private Path folder;
  private Database database;
  private Authenticators kept;
  private final UUID person = UUID.randomUUID();

  @BeforeEach
  void open() throws Exception {
    database = Database.file(folder.resolve("codes.db"));
    kept = new Authenticators(database);
  }

  @AfterEach
  void close() {
    database.close();
  }

  private OneTimeCodes at(Duration afterNoon) {
    return new OneTimeCodes(kept, Clock.fixed(NOON.plus(afterNoon), ZoneOffset.UTC));
  }

  /**
   * RFC 6238, appendix B, gives eight digits; six are the last six of them, because both are the
   * same number modulo a power of ten (RFC 4226, 5.3).
   */
  @ParameterizedTest
  @CsvSource({
    "59, 94287082",
    "1111111109, 07081804",
    "1111111111, 14050471",
    "1234567890, 89005924",
    "2000000000, 69279037",
    "20000000000, 65353130"
  })
  void codesAreThoseOfTheStandard(long second, String published) {
    assertEquals(
        published.substring(2), OneTimeCodes.at(PUBLISHED_KEY, Instant.ofEpochSecond(second)));
  }

  /** Switched on a day before noon. */
  private String switchedOn() {
    OneTimeCodes codes = at(Duration.ofDays(-1));
    codes.begin(person);
    String secret = codes.begun(person).orElseThrow();
    String first = OneTimeCodes.at(secret, NOON.minus(Duration.ofDays(1)));
    assertEquals(10, new HashSet<>(codes.switchOn(person, first)).size());
    return secret;
  }

  @ParameterizedTest
  @CsvSource({"-60, false", "-30, true", "0, true", "30, true", "60, false"})
  void aCodeIsTakenAStepBeforeAndAStepAfterItsTime(long clockOfThePhoneS, boolean taken) {
    String code = OneTimeCodes.at(switchedOn(), NOON.plusSeconds(clockOfThePhoneS));
    assertEquals(taken, at(Duration.ZERO).take(person, code));
  }

  @Test
  void noCodeIsTakenTwiceNorAfterALaterOne() {
    String secret = switchedOn();
    String early = OneTimeCodes.at(secret, NOON);
    String late = OneTimeCodes.at(secret, NOON.plusSeconds(30));
    assertTrue(at(Duration.ZERO).take(person, late.substring(0, 3) + " " + late.substring(3)));
    assertFalse(at(Duration.ofSeconds(1)).take(person, late), "once");
    assertFalse(at(Duration.ofSeconds(2)).take(person, early), "a later one was taken");
    assertTrue(
        at(Duration.ofSeconds(60)).take(person, OneTimeCodes.at(secret, NOON.plusSeconds(60))));
  }

  @Test
  void theFirstCodeIsUsedUpToo() {
    OneTimeCodes codes = at(Duration.ZERO);
    codes.begin(person);
    String secret = codes.begun(person).orElseThrow();
    String first = OneTimeCodes.at(secret, NOON);
    assertEquals(List.of(), codes.switchOn(person, first.equals("000000") ? "111111" : "000000"));
    assertFalse(codes.on(person), "nothing is asked for before a first code");
    assertFalse(codes.take(person, first), "nor taken");
    assertFalse(codes.switchOn(person, first).isEmpty());
    assertFalse(codes.take(person, first));
    codes.begin(person);
    assertTrue(codes.on(person), "a new secret does not switch it off");
  }

  @Test
  void eachRecoveryCodeStandsInOnceAndIsKeptAsAHash() {
    OneTimeCodes codes = at(Duration.ZERO);
    codes.begin(person);
    String secret = codes.begun(person).orElseThrow();
    List<String> standIns = codes.switchOn(person, OneTimeCodes.at(secret, NOON));
    List<String> hashes = kept.standIns(person);
    assertEquals(10, hashes.size());
    assertTrue(hashes.stream().allMatch(one -> one.startsWith("$argon2id$")), hashes.toString());
    String one = standIns.get(7);
    assertFalse(codes.take(UUID.randomUUID(), one), "somebody else's");
    assertTrue(codes.take(person, " " + one.toLowerCase(java.util.Locale.ROOT)));
    assertFalse(codes.take(person, one));
    assertEquals(9, codes.standInsLeft(person));
    codes.end(person);
    assertFalse(codes.take(person, standIns.get(0)));
    assertEquals(0, codes.standInsLeft(person));
  }
}
