package kerfwright.practice.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * Keeps what an app makes somebody's codes from, and the codes that stand in for an app that is
 * lost. One process after the other: a code is taken once.
 */
public interface Authenticators {
  /**
   * What somebody's app makes codes from.
   *
   * @param secret shared with the app, Base32 (RFC 4648)
   * @param on false until a first code was given
   */
  record Authenticator(String secret, boolean on) {}

  Optional<Authenticator> find(UUID account);

  /** Whoever is asked for a code. */
  Set<UUID> on();

  /** A new secret, not on yet; where one is on it stays, and false comes back. */
  boolean begin(UUID account, String secret);

  /**
   * Switches that secret on, with the step of the first code and hashes of what stands in for a
   * code; false where it is on already, or another one began meanwhile.
   */
  boolean switchOn(UUID account, String secret, long step, List<String> standIns);

  /** Takes the code of a step; false where that one, or a later one, was taken before. */
  boolean take(UUID account, long step);

  /** Hashes of what stands in for a code and was not used. */
  List<String> standIns(UUID account);

  /** Uses one up; false where somebody was quicker. */
  boolean use(UUID account, String standIn);

  /** No code is asked for any more. */
  void end(UUID account);
}
