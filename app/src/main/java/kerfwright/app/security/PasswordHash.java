package kerfwright.app.security;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.concurrent.Semaphore;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Argon2id (RFC 9106) with 19 MiB, two passes and one lane, the least the OWASP Password Storage
 * Cheat Sheet takes; written as {@code $argon2id$v=19$m=19456,t=2,p=1$salt$hash}. Two are computed
 * at once at most, so that many tries at once do not take the memory.
 */
public final class PasswordHash {
  static final int KIB = 19 * 1024;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int SALT_BYTES = 16;
  private static final int HASH_BYTES = 32;
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final Semaphore AT_ONCE = new Semaphore(2, true);

  /** What a new hash costs; only tests that are not about it take less. */
  static volatile int kib = KIB;

  /** Compared with where there is nobody: it takes as long, and holds for no password. */
  private static final String NOBODY = of(Secrets.token());

  private PasswordHash() {}

  /** A new hash, with a salt of its own. */
  public static String of(String password) {
    int costs = kib;
    byte[] salt = new byte[SALT_BYTES];
    RANDOM.nextBytes(salt);
    Base64.Encoder text = Base64.getEncoder().withoutPadding();
    return "$argon2id$v=19$m=%d,t=%d,p=%d$%s$%s"
        .formatted(
            costs,
            PASSES,
            LANES,
            text.encodeToString(salt),
            text.encodeToString(hash(password, salt, costs, PASSES, LANES)));
  }

  /** Whether it is that password; with an empty hash it takes as long and is not. */
  public static boolean holds(String hash, String password) {
    String[] parts = (hash.isEmpty() ? NOBODY : hash).split("\\$");
    String[] costs = parts[3].split("[=,]");
    byte[] salt = Base64.getDecoder().decode(parts[4]);
    int kib = Integer.parseInt(costs[1]);
    int passes = Integer.parseInt(costs[3]);
    byte[] found = hash(password, salt, kib, passes, Integer.parseInt(costs[5]));
    return Secrets.same(Base64.getEncoder().withoutPadding().encodeToString(found), parts[5])
        && !hash.isEmpty();
  }

  private static byte[] hash(String password, byte[] salt, int kib, int passes, int lanes) {
    Argon2BytesGenerator generator = new Argon2BytesGenerator();
    generator.init(
        new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
            .withMemoryAsKB(kib)
            .withIterations(passes)
            .withParallelism(lanes)
            .withSalt(salt)
            .build());
    byte[] hash = new byte[HASH_BYTES];
    AT_ONCE.acquireUninterruptibly();
    try {
      generator.generateBytes(password.getBytes(StandardCharsets.UTF_8), hash);
    } finally {
      AT_ONCE.release();
    }
    return hash;
  }
}
