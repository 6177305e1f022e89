package kerfwright.app.backup;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which practice a command is about. */
final class PracticeOption {
  @Option(
      names = "--data",
      paramLabel = "DIR",
      description = "Folder of the practice. KERFWRIGHT_DATABASE names a PostgreSQL instead.")
  private @Nullable Path folder;

  @Nullable Path folder() {
    return folder;
  }
}
