package kerfwright.app.backup;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Database;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes everything that is kept into one archive, also while the program serves. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = "Writes everything the practice keeps into one archive, while it is in use too.")
public final class ExportCommand implements Callable<Integer> {
  private final PrintStream err;

  @Parameters(paramLabel = "OUT.zip", description = "The archive; it must not exist yet.")
  private @Nullable Path file;

  @Mixin private final PracticeOption practice = new PracticeOption();

  public ExportCommand(PrintStream err) {
    this.err = err;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    if (file == null) {
      throw new BadInput("export", "the name of an archive was expected");
    }
    if (Files.exists(file)) {
      throw new BadInput(file.toString(), "exists already and is not overwritten; give a new name");
    }
    Path parent = file.toAbsolutePath().getParent();
    if (parent != null && !Files.isDirectory(parent)) {
      throw new BadInput(file.toString(), "there is no folder " + parent);
    }
    try (Database database = Place.there(practice.folder())) {
      Manifest manifest = Archive.write(database, file, Clock.systemUTC().instant());
      err.println(manifest.tables().size() + " tables, " + manifest.rows() + " rows: " + file);
      err.flush();
      return 0;
    }
  }
}
