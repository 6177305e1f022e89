package kerfwright.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is looked at one by one with {@code -Dthorough=true}, as the machine that accepts changes
 * does, and by samples in the build on the desk.
 */
public final class Thorough {
  /** Name of the property, for tests that run only then. */
  public static final String PROPERTY = "thorough";

  private static final Path EXAMPLES = Path.of("../examples");

  private Thorough() {}

  /** All, or the first of every so many. */
  public static <T> List<T> of(List<T> all, int every) {
    int step = Boolean.getBoolean(PROPERTY) ? 1 : every;
    return IntStream.range(0, all.size()).filter(i -> i % step == 0).mapToObj(all::get).toList();
  }

  /** The example cases, or those with the longest plans. */
  public static List<Path> examples() {
    if (!Boolean.getBoolean(PROPERTY)) {
      return Stream.of(
              "access-unknown-crown",
              "access-metal-ceramic-ni-cr",
              "crown-front-ceramic",
              "crown-preparation",
              "post-removal-fibre",
              "refused-thin-dentine",
              "sectioning-unknown-crown",
              "veneer-preparation")
          .map(name -> EXAMPLES.resolve(name + ".yaml"))
          .toList();
    }
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .filter(file -> !file.getFileName().toString().startsWith("day-"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
