package kerfwright.practice.record;

import java.time.Instant;

/**
 * The chain of hashes. The hash of an entry is SHA-256 (FIPS 180-4), in lower-case hexadecimal, of
 * the hash of the entry before it, a line feed, and the entry's {@link CanonicalText}, in UTF-8;
 * before the first entry stand 64 zeros. Whoever changes, inserts or removes an entry changes every
 * hash after it. A chain rewritten to its end holds together again: only a hash noted elsewhere (on
 * paper, in a backup) shows that.
 *
 * @param number place of the last entry, 0 where there is none
 * @param hash its hash
 */
public record Chain(long number, String hash) {
  /** The chain without any entry. */
  public static final Chain EMPTY = new Chain(0, "0".repeat(64));

  /** The entry that this statement becomes at the end of this chain. */
  public RecordEntry link(Statement statement, Instant recordedAt) {
    long place = number + 1;
    String text = CanonicalText.of(place, recordedAt, statement);
    return new RecordEntry(place, recordedAt, statement, hash(hash, text));
  }

  /** The chain with that entry at its end. */
  public Chain after(RecordEntry entry) {
    return new Chain(entry.number(), entry.hash());
  }

  /** The chain with one more link at its end, of any text. */
  public Chain after(String text) {
    return new Chain(number + 1, hash(hash, text));
  }

  private static String hash(String previous, String text) {
    return Sha256.of(previous + "\n" + text);
  }
}
