package kerfwright.catalogue.number;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Measures the codec on one core and prints JSON: digits to number to digits, and that with the
 * lookup of every group. Counts the processor time of its thread, so that a busy machine does not
 * spoil the figure. Run its main method; it is no test.
 */
public final class NumberBenchmark {
  private static final int TEXTS = 1 << 16;
  private static final int ROUNDS = 200;

  private NumberBenchmark() {}

  public static void main(String[] arguments) {
    String[] texts = texts();
    double plain = 0;
    double explained = 0;
    for (int run = 0; run < 5; run++) {
      plain = perSecond(texts, ROUNDS, false);
      explained = perSecond(texts, 2, true);
    }
    System.out.printf(
        Locale.ROOT,
        "{\"bench\":\"number\",\"decodeEncodePerSecond\":%.0f,\"explainPerSecond\":%.0f,"
            + "\"java\":\"%s\"}%n",
        plain,
        explained,
        System.getProperty("java.version"));
  }

  private static double perSecond(String[] texts, int rounds, boolean explain) {
    long check = 0;
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long start = threads.getCurrentThreadCpuTime();
    for (int round = 0; round < rounds; round++) {
      for (String text : texts) {
        IsoNumber number = IsoNumber.parse(text);
        check += explain ? number.explain().groups().size() : number.digits().charAt(7);
      }
    }
    double seconds = (threads.getCurrentThreadCpuTime() - start) * 1e-9;
    if (check == 0) {
      throw new IllegalStateException("nothing was read");
    }
    return rounds * (double) texts.length / seconds;
  }

  private static String[] texts() {
    SplittableRandom random = new SplittableRandom(1);
    String[] texts = new String[TEXTS];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = new IsoNumber(random.nextLong(1_000_000_000_000_000L), 15).digits();
    }
    return texts;
  }
}
