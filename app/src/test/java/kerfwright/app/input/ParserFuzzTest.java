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
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every parser and form ends well whatever it is given: in a value or in its own kind of fault, in
 * time. All examples and the kept corpus are read in every build; then coverage-guided fuzzers,
 * each in a process of its own, change them for {@code fuzz.seconds} in all, with {@code -Pfuzz}
 * for ten minutes. What failed is kept in {@code target/fuzz}: put it under {@code
 * src/test/fuzz/found} in the folder of its group. On two busy cores the fuzzers found a planted
 * fault behind four characters of a tooth after some 66 000 runs (5 s), behind three in a field of
 * a maker's code after 131 000 to 262 000 (20 to 30 s: more than their share of the minute there),
 * and at four compared in the material of a case after 8 000 to 16 000 (20 s).
 */
@Timeout(value = 30, unit = TimeUnit.MINUTES)
class ParserFuzzTest {
  private static final Path MADE = Path.of("target/fuzz");
  private static final int LONGEST_S = 10;
  private static final Pattern RUNS = Pattern.compile("Done (\\d+) runs");

  @TempDir private Path folder;

  /** All of a group by name, as the fuzzer takes them. */
  private static Map<String, byte[]> inputs(FuzzTarget.Group group) throws IOException {
    Map<String, byte[]> all = new LinkedHashMap<>();
    for (FuzzTarget target : FuzzTarget.of(group)) {
      Map<String, byte[]> whole = new LinkedHashMap<>();
      for (String text : List.of("", "16", "{\"case\": \"K-1\"}", "0101234567890128172612311")) {
        whole.put(text, text.getBytes(StandardCharsets.UTF_8));
      }
      for (Path example : files(Path.of("../examples"), Path.of("../examples/bad"))) {
        if (belongs(target.name(), example.getFileName().toString())) {
          whole.put(example.toString(), Files.readAllBytes(example));
        }
      }
      for (Path kept : files(ParserFuzz.KEPT.resolve(target.name()))) {
        whole.put(kept.toString(), Files.readAllBytes(kept));
      }
      all.putAll(ParserFuzz.begin(target, whole));
    }
    for (Path kept : files(ParserFuzz.KEPT.resolve("found").resolve(group.name()))) {
      all.put(kept.toString(), Files.readAllBytes(kept));
    }
    return all;
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

  @ParameterizedTest
  @EnumSource(FuzzTarget.Group.class)
  void everyKeptInputEndsWell(FuzzTarget.Group group) throws Exception {
    List<String> failures = new ArrayList<>();
    Map<String, byte[]> all = inputs(group);
    for (Map.Entry<String, byte[]> one : all.entrySet()) {
      long begun = System.nanoTime();
      try {
        ParserFuzz.read(group, one.getValue());
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
        failures.add(one.getKey() + ": " + fault);
      }
      if (System.nanoTime() - begun > TimeUnit.SECONDS.toNanos(LONGEST_S)) {
        failures.add(one.getKey() + ": took too long");
      }
    }
    assertEquals(List.of(), failures);
  }

  /** What a fuzzer begins with reaches where values are used: a sound text has no fault. */
  @ParameterizedTest
  @EnumSource(FuzzTarget.Group.class)
  void everySoundTextIsSound(FuzzTarget.Group group) throws Exception {
    for (FuzzTarget target : FuzzTarget.of(group)) {
      Path sound = ParserFuzz.KEPT.resolve(target.name()).resolve("sound");
      if (Files.exists(sound)) {
        target.reader().read(Files.readString(sound));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(FuzzTarget.Group.class)
  void theFuzzerFindsNothing(FuzzTarget.Group group) throws Exception {
    long asked = Long.getLong("fuzz.seconds", 0);
    Assumptions.assumeTrue(asked > 0, "asked for by -Pfuzz");
    String machine = System.getProperty("os.name") + " " + System.getProperty("os.arch");
    Assumptions.assumeTrue(
        machine.matches("(Linux|Mac OS X) (amd64|x86_64|aarch64)|Windows.* amd64"), machine);
    Path seeds = Files.createDirectory(folder.resolve("seeds"));
    int number = 0;
    for (byte[] one : inputs(group).values()) {
      if (one.length <= group.longest()) {
        Files.write(seeds.resolve(Integer.toString(number++)), one);
      }
    }
    Path made = MADE.resolve(group.name());
    Path corpus = Files.createDirectories(made.resolve("corpus"));
    Path log = made.resolve("log.txt");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // the quick compiler alone: the other one would be at work for as long as the fuzzer
    command.addAll(List.of("-Xmx600m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    command.addAll(List.of("-Dfuzz.group=" + group, "-cp", System.getProperty("java.class.path")));
    command.add("com.code_intelligence.jazzer.Jazzer");
    command.add("--target_class=" + ParserFuzz.class.getName());
    command.add("--instrumentation_includes=" + group.packages());
    command.add("--custom_hook_includes=" + group.packages());
    command.add("--reproducer_path=" + made);
    command.add("-artifact_prefix=" + made + "/");
    command.add("-dict=" + ParserFuzz.KEPT.resolve("words.dict"));
    // how often a loop turns is no news: it would fill the corpus with what differs in length alone
    command.add("-use_counters=0");
    command.addAll(group.options());
    command.add("-seed=" + Long.getLong("fuzz.seed", 20261130));
    long seconds = asked * group.ofAMinute() / 60;
    command.add("-max_total_time=" + Math.max(1, seconds));
    command.addAll(List.of("-max_len=" + group.longest(), "-timeout=" + LONGEST_S));
    command.addAll(List.of("-rss_limit_mb=0", corpus.toString(), seeds.toString()));
    Process fuzzer =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    try {
      int code = fuzzer.waitFor();
      String said = Files.readString(log, StandardCharsets.ISO_8859_1);
      assertEquals(0, code, said.substring(Math.max(0, said.length() - 4000)));
      Matcher runs = RUNS.matcher(said);
      assertTrue(runs.find() && Long.parseLong(runs.group(1)) > 2L * number, "it ran too little");
    } finally {
      fuzzer.destroyForcibly();
    }
  }
}
