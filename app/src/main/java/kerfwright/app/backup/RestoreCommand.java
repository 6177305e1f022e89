package kerfwright.app.backup;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts an archive into an empty practice. */
@Command(
    name = "restore",
    mixinStandardHelpOptions = true,
    description = "Puts an archive into an empty practice; what is there is never overwritten.")
public final class RestoreCommand implements Callable<Integer> {
  private final PrintStream err;

  @Parameters(paramLabel = "ARCHIVE.zip", description = "The archive.")
  private @Nullable Path file;

  @Option(
      names = "--data",
      paramLabel = "DIR",
      description = "New or empty folder. KERFWRIGHT_DATABASE names an empty PostgreSQL instead.")
  private @Nullable Path data;

  @Option(
      names = "--key",
      paramLabel = "KEY",
      description = "What opens a locked backup, as noted; or in KERFWRIGHT_BACKUP_KEY.")
  private @Nullable String key;

  @Option(
      names = "--drill",
      description = "Restore into a folder that is thrown away, and say whether it would work.")
  private boolean drill;

  public RestoreCommand(PrintStream err) {
    this.err = err;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    if (file == null) {
      throw new BadInput("restore", "the name of an archive was expected");
    }
    String given = key == null ? System.getenv("KERFWRIGHT_BACKUP_KEY") : key;
    String opening = given == null || given.isBlank() ? null : BackupKey.typed(given);
    if (drill) {
      long begun = System.nanoTime();
      Manifest tried = Restoration.drill(file, opening);
      err.println(
          "This backup can be restored: "
              + tried.tables().size()
              + " tables, "
              + tried.rows()
              + " rows of "
              + tried.madeAt()
              + ", checked in "
              + (System.nanoTime() - begun) / 1_000_000_000
              + " s. Nothing was kept.");
      err.flush();
      return 0;
    }
    Manifest manifest = Restoration.of(file, opening, schema -> Place.empty(data, schema));
    // what came after the archive's schema is done now, and not at the next start
    Place.there(data).close();
    err.println(
        "Restored "
            + manifest.tables().size()
            + " tables, "
            + manifest.rows()
            + " rows, as they stood at "
            + manifest.madeAt());
    err.flush();
    return 0;
  }
}
