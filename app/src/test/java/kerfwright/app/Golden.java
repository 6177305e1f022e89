package kerfwright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Files holding what was printed once and read by a person. After a wanted change run with {@code
 * -Dgolden.update=true} and read the difference before it is committed.
 */
public final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/kerfwright/app/golden");

  private Golden() {}

  public static void check(String name, String printed) throws IOException {
    Path file = FOLDER.resolve(name);
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, printed);
    }
    assertEquals(Files.readString(file), printed, name);
  }
}
