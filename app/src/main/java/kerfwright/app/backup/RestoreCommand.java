package kerfwright.app.backup;

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

  public RestoreCommand(PrintStream err) {
    this.err = err;
  }

  @Override
  public Integer call() throws BadInput {
    if (file == null) {
      throw new BadInput("restore", "the name of an archive was expected");
    }
    Manifest manifest = Restoration.of(file, schema -> Place.empty(data, schema));
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
