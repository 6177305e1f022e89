package kerfwright.app.security;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which passwords and digits are taken, and how they are kept. */
class PasswordRuleTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"velvet anvil under seven lamps", "ö ü ß Ж 漢 and more", "k9#Lw!tQ2z%Vb&8"})
  void anyLettersAreTaken(String password) {
    assertEquals(Optional.empty(), PasswordRule.fault(password, "AB"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"short", "elevenchars", ""})
  void shortOnesAreNot(String password) {
    assertEquals(Optional.of("signin.password-length"), PasswordRule.fault(password, "AB"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "password1234",
        "aaaaaaaaaaaaaaaa",
        "qwertyuiop12",
        "kerfwright2026",
        "practice1234"
      })
  void thoseManyChooseAreNot(String password) {
    assertEquals(Optional.of("signin.password-guessed"), PasswordRule.fault(password, "AB"));
  }

  @Test
  void longOnesAreTakenAndNotCut() {
    String sixtyFour = "seven herons wait beside the cold mill pond until the lamps go o";
    assertEquals(64, sixtyFour.length());
    assertEquals(Optional.empty(), PasswordRule.fault(sixtyFour, "AB"));
    String hash = PasswordHash.of(sixtyFour);
    assertFalse(PasswordHash.holds(hash, sixtyFour.substring(0, 63)));
  }

  @Test
  void hashesAreArgon2idWithASaltEach() {
    PasswordHash.kib = PasswordHash.KIB;
    String hash = PasswordHash.of("velvet anvil under seven lamps");
    PasswordHash.kib = QuickHashes.KIB;
    assertTrue(hash.startsWith("$argon2id$v=19$m=19456,t=2,p=1$"), hash);
    assertNotEquals(hash, PasswordHash.of("velvet anvil under seven lamps"));
    assertTrue(PasswordHash.holds(hash, "velvet anvil under seven lamps"));
    assertFalse(PasswordHash.holds(hash, "Velvet anvil under seven lamps"));
    assertFalse(PasswordHash.holds("", "velvet anvil under seven lamps"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1111", "1234", "987654", "0123", "123", "1234567", "12a4"})
  void digitsAnybodyTriesFirstAreNotTaken(String digits) {
    assertFalse(PasswordRule.arePin(digits));
  }

  @ParameterizedTest
  @ValueSource(strings = {"4071", "80521", "190283"})
  void otherDigitsAre(String digits) {
    assertTrue(PasswordRule.arePin(digits));
  }
}
