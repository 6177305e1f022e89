package kerfwright.app.security;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import kerfwright.practice.record.Sha256;

/** Tokens nobody guesses, and codes somebody reads off a screen. */
public final class Secrets {
  private static final SecureRandom RANDOM = new SecureRandom();
  // without what is mistaken for something else
  private static final String LETTERS = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";
  private static final int TOKEN_BYTES = 32;

  private Secrets() {}

  /** 256 random bits, as it goes into an address or a header. */
  public static String token() {
    byte[] bytes = new byte[TOKEN_BYTES];
    RANDOM.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** Twelve letters in groups of four: some 59 random bits. */
  public static String code() {
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < 12; i++) {
      code.append(i > 0 && i % 4 == 0 ? "-" : "");
      code.append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
    }
    return code.toString();
  }

  /** Whether it is of the kind that {@link #code} makes. */
  static boolean looksLikeACode(String text) {
    return text.matches("[" + LETTERS + "]{4}(-[" + LETTERS + "]{4}){2}");
  }

  /** What is kept of a token: it has too many bits to be guessed from its hash. */
  public static String hash(String token) {
    return Sha256.of(token);
  }

  /** Takes the same time wherever they differ. */
  public static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }
}
