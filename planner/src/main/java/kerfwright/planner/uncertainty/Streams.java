package kerfwright.planner.uncertainty;

/**
 * Random numbers by name: each is a function of seed, sample and the name of what is drawn, and of
 * nothing else. Whatever else is drawn, before it or besides it, moves it no bit.
 *
 * <p>The name is hashed by FNV-1a (64 bits); seed, sample and hash are mixed by the finaliser of
 * SplitMix64 (Steele, Lea and Flood 2014), once for each word, so that the generator has a counter
 * and no state. {@link StrictMath} keeps the numbers alike on every machine. Every second sample
 * mirrors the one before it (antithetic variates), so that medians stand still with few samples.
 *
 * @param seed seed of all samples
 * @param sample number of the sample
 */
public record Streams(long seed, int sample) {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final double UNIT = 0x1.0p-53;

  /** Between 0 and 1, neither included. */
  public double uniform(String name) {
    double one = uniform(name, 0);
    return mirrored() ? 1 - one : one;
  }

  private boolean mirrored() {
    return (sample & 1) == 1;
  }

  private double uniform(String name, int word) {
    long mixed = mix(mix(mix(seed + GOLDEN) ^ (sample >> 1)) ^ (hash(name) + word));
    return ((mixed >>> 11) + 0.5) * UNIT;
  }

  /** Standard normal, by Box and Muller. */
  public double normal(String name) {
    return sign() * StrictMath.sqrt(-2 * StrictMath.log(uniform(name, 1))) * wave(name);
  }

  /** Student's t, by Bailey (Math Comput 1994;62:779, from memory). */
  public double t(String name, double freedom) {
    double radius = freedom * (StrictMath.pow(uniform(name, 1), -2 / freedom) - 1);
    return sign() * StrictMath.sqrt(radius) * wave(name);
  }

  private int sign() {
    return mirrored() ? -1 : 1;
  }

  private double wave(String name) {
    return StrictMath.cos(2 * Math.PI * uniform(name, 2));
  }

  private static long hash(String name) {
    long hash = 0xCBF29CE484222325L;
    for (int i = 0; i < name.length(); i++) {
      hash = (hash ^ name.charAt(i)) * 0x100000001B3L;
    }
    return hash;
  }

  private static long mix(long z) {
    long a = z + GOLDEN;
    a = (a ^ (a >>> 30)) * 0xBF58476D1CE4E5B9L;
    a = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
    return a ^ (a >>> 31);
  }
}
