package kerfwright.app.security;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import javax.crypto.spec.SecretKeySpec;
import kerfwright.app.storage.people.Authenticators;
import kerfwright.app.storage.people.Authenticators.Authenticator;
import org.bouncycastle.util.encoders.Base32;

/**
 * Codes that an app shows (RFC 6238, with what every app takes: HMAC-SHA-1, six digits, 30 s). One
 * of a step before or after is taken too, as RFC 6238, 5.2 has it for clocks that differ; none is
 * taken twice, nor after a later one. Ten recovery codes stand in for an app that is lost, each
 * once.
 */
public final class OneTimeCodes {
  static final Duration STEP = TimeBasedOneTimePasswordGenerator.DEFAULT_TIME_STEP;
  private static final int AROUND = 1;
  private static final int STAND_INS = 10;
  // 160 bits, as RFC 4226, 4 recommends
  private static final int SECRET_BYTES = 20;
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final TimeBasedOneTimePasswordGenerator CODES =
      new TimeBasedOneTimePasswordGenerator();

  private final Authenticators kept;
  private final Clock clock;

  public OneTimeCodes(Authenticators kept, Clock clock) {
    this.kept = kept;
    this.clock = clock;
  }

  /** The code of a secret (Base32) at a time. */
  public static String at(String secret, Instant time) {
    try {
      return CODES.generateOneTimePasswordString(
          new SecretKeySpec(Base32.decode(secret), CODES.getAlgorithm()), time, Locale.ROOT);
    } catch (InvalidKeyException noKeyAtAll) {
      throw new IllegalArgumentException(noKeyAtAll);
    }
  }

  /** The address that an app reads off a drawn code. */
  public static String address(String secret, String initials) {
    return "otpauth://totp/Kerfwright:%s?secret=%s&issuer=Kerfwright"
        .formatted(URLEncoder.encode(initials, StandardCharsets.UTF_8), secret);
  }

  public boolean on(UUID account) {
    return kept.find(account).filter(Authenticator::on).isPresent();
  }

  /** Whoever is asked for a code. */
  public Set<UUID> on() {
    return kept.on();
  }

  /** What was begun and is not on yet. */
  public Optional<String> begun(UUID account) {
    return kept.find(account).filter(one -> !one.on()).map(Authenticator::secret);
  }

  /** A new secret for somebody's app; nothing is asked for until a first code was given. */
  public void begin(UUID account) {
    byte[] secret = new byte[SECRET_BYTES];
    RANDOM.nextBytes(secret);
    kept.begin(account, Base32.toBase32String(secret));
  }

  /** Switches it on by a first code; the recovery codes, shown once, or none where it is wrong. */
  public List<String> switchOn(UUID account, String given) {
    Optional<String> secret = begun(account);
    OptionalLong step = secret.map(one -> step(one, given)).orElse(OptionalLong.empty());
    if (secret.isEmpty() || step.isEmpty()) {
      return List.of();
    }
    List<String> codes = Stream.generate(Secrets::code).limit(STAND_INS).toList();
    List<String> hashes = codes.stream().map(PasswordHash::of).toList();
    return kept.switchOn(account, secret.get(), step.getAsLong(), hashes) ? codes : List.of();
  }

  /** Whether it is a code of now, or a recovery code; either is used up by it. */
  public boolean take(UUID account, String given) {
    Optional<String> secret =
        kept.find(account).filter(Authenticator::on).map(Authenticator::secret);
    if (secret.isEmpty()) {
      return false;
    }
    OptionalLong step = step(secret.get(), given);
    if (step.isPresent()) {
      return kept.take(account, step.getAsLong());
    }
    String standIn = given.strip().toUpperCase(Locale.ROOT);
    return Secrets.looksLikeACode(standIn)
        && kept.standIns(account).stream()
            .filter(hash -> PasswordHash.holds(hash, standIn))
            .findFirst()
            .filter(hash -> kept.use(account, hash))
            .isPresent();
  }

  /** The step whose code it is, the latest where it is of several. */
  private OptionalLong step(String secret, String given) {
    String digits = given.replaceAll("\\s+", "");
    long now = clock.instant().getEpochSecond() / STEP.toSeconds();
    return LongStream.rangeClosed(now - AROUND, now + AROUND)
        .filter(
            step ->
                Secrets.same(at(secret, Instant.ofEpochSecond(step * STEP.toSeconds())), digits))
        .max();
  }

  /** How many recovery codes are left. */
  public int standInsLeft(UUID account) {
    return kept.standIns(account).size();
  }

  public void end(UUID account) {
    kept.end(account);
  }
}
