package kerfwright.app.backup;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.words.Say;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts an archive into an empty practice. */
@Command(name = "restore", mixinStandardHelpOptions = true)
public final class RestoreCommand implements Callable<Integer> {
  private final Say say;
  private final PrintStream err;

  @Parameters(paramLabel = "ARCHIVE.zip", descriptionKey = "archive")
  private @Nullable Path file;

  @Option(names = "--data", paramLabel = "DIR")
  private @Nullable Path data;

  @Option(names = "--key", paramLabel = "KEY")
  private @Nullable String key;

  @Option(names = "--drill")
  private boolean drill;

  public RestoreCommand(Say say, PrintStream err) {
    this.say = say;
    this.err = err;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    if (file == null) {
      throw new BadInput("restore", Message.of("backup.no-name"));
    }
    String given = key == null ? System.getenv("KERFWRIGHT_BACKUP_KEY") : key;
    String opening = given == null || given.isBlank() ? null : BackupKey.typed(given);
    if (drill) {
      long begun = System.nanoTime();
      Manifest tried = Restoration.drill(file, opening);
      long seconds = (System.nanoTime() - begun) / 1_000_000_000;
      err.println(
          say.at("backup.drilled", tried.tables().size(), tried.rows(), tried.madeAt(), seconds));
      err.flush();
      return 0;
    }
    Manifest manifest = Restoration.of(file, opening, schema -> Place.empty(data, schema));
    // what came after the archive's schema is done now, and not at the next start
    Place.there(data).close();
    err.println(
        say.at("backup.restored", manifest.tables().size(), manifest.rows(), manifest.madeAt()));
    err.flush();
    return 0;
  }
}
