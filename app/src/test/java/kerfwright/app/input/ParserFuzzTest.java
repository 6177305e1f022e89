package kerfwright.app.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every parser ends well whatever it is given: in a value or in its own kind of fault, in time. All
 * examples and the kept corpus are read in every build; then a coverage-guided fuzzer changes them
 * for {@code fuzz.seconds} in a process of its own, with {@code -Pfuzz} for ten minutes. What
 * failed is kept in {@code target/fuzz}: put it under {@code src/test/fuzz/found}. What {@code
 * -Pfuzz} finds new is left in {@code target/fuzz/corpus}.
 */
@Timeout(value = 30, unit = TimeUnit.MINUTES)
class ParserFuzzTest {
  private static final Path KEPT = Path.of("src/test/fuzz");
  private static final Path MADE = Path.of("target/fuzz");
  private static final int LONGEST_S = 10;
  private static final int LARGEST = 60_000;
  private static final Pattern RUNS = Pattern.compile("Done (\\d+) runs");

  @TempDir private Path folder;

  /** By name, as the fuzzer takes them: the first byte chooses the parser. */
  private static Map<String, byte[]> inputs() throws IOException {
    Map<String, byte[]> all = new LinkedHashMap<>();
    for (String parser : ParserFuzz.parsers()) {
      for (String text : List.of("", "16", "{\"case\": \"K-1\"}", "0101234567890128172612311")) {
        all.put(parser + " " + text, ParserFuzz.input(parser, bytes(text)));
      }
      for (Path example : files(Path.of("../examples"), Path.of("../examples/bad"))) {
        if (belongs(parser, example.getFileName().toString())) {
          all.put(parser + " " + example, ParserFuzz.input(parser, Files.readAllBytes(example)));
        }
      }
      for (Path kept : files(KEPT.resolve(parser))) {
        all.put(parser + " " + kept, ParserFuzz.input(parser, Files.readAllBytes(kept)));
      }
    }
    for (Path kept : files(KEPT.resolve("corpus"), KEPT.resolve("found"))) {
      all.put(kept.toString(), Files.readAllBytes(kept));
    }
    return all;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static List<Path> files(Path... folders) throws IOException {
    List<Path> all = new ArrayList<>();
    for (Path folder : folders) {
      if (Files.isDirectory(folder)) {
        try (Stream<Path> files = Files.list(folder)) {
          files.filter(Files::isRegularFile).sorted().forEach(all::add);
        }
      }
    }
    return all;
  }

  private static boolean belongs(String parser, String file) {
    return switch (parser) {
      case "day" -> file.startsWith("day");
      case "heat" -> file.startsWith("heat");
      case "drawer", "list" -> file.endsWith(".csv");
      case "case" -> file.endsWith(".yaml") && !file.startsWith("day");
      default -> false;
    };
  }

  @Test
  void everyKeptInputEndsWell() throws Exception {
    List<String> failures = new ArrayList<>();
    Map<String, byte[]> all = inputs();
    assertTrue(all.size() > 100, "inputs found: " + all.size());
    for (Map.Entry<String, byte[]> one : all.entrySet()) {
      long begun = System.nanoTime();
      try {
        ParserFuzz.fuzzerTestOneInput(one.getValue());
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
        failures.add(one.getKey() + ": " + fault);
      }
      if (System.nanoTime() - begun > TimeUnit.SECONDS.toNanos(LONGEST_S)) {
        failures.add(one.getKey() + ": took too long");
      }
    }
    assertEquals(List.of(), failures);
  }

  @Test
  void theFuzzerFindsNothing() throws Exception {
    String machine = System.getProperty("os.name") + " " + System.getProperty("os.arch");
    Assumptions.assumeTrue(
        machine.matches("(Linux|Mac OS X) (amd64|x86_64|aarch64)|Windows.* amd64"), machine);
    Path seeds = Files.createDirectory(folder.resolve("seeds"));
    int number = 0;
    for (byte[] one : inputs().values()) {
      Files.write(seeds.resolve(Integer.toString(number++)), one);
    }
    Path corpus = Files.createDirectories(MADE.resolve("corpus"));
    Path log = MADE.resolve("log.txt");
    Process fuzzer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx600m",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + ParserFuzz.class.getName(),
                "--instrumentation_includes=kerfwright.**",
                "--reproducer_path=" + MADE,
                "-artifact_prefix=" + MADE + "/",
                "-seed=" + Long.getLong("fuzz.seed", 20261130),
                "-max_total_time=" + Long.getLong("fuzz.seconds", 12),
                "-max_len=" + LARGEST,
                "-timeout=" + LONGEST_S,
                "-rss_limit_mb=0",
                corpus.toString(),
                seeds.toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    try {
      int code = fuzzer.waitFor();
      String said = Files.readString(log, StandardCharsets.ISO_8859_1);
      assertEquals(0, code, said.substring(Math.max(0, said.length() - 4000)));
      Matcher runs = RUNS.matcher(said);
      assertTrue(runs.find() && Long.parseLong(runs.group(1)) > number, "it ran too little");
    } finally {
      fuzzer.destroyForcibly();
    }
  }
}
