package kerfwright.app.backup;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which practice a command is about. */
final class PracticeOption {
  @Option(names = "--data", paramLabel = "DIR")
  private @Nullable Path folder;

  @Nullable Path folder() {
    return folder;
  }
}
