package kerfwright.app.backup;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Database;
import kerfwright.app.words.Say;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes everything that is kept into one archive, also while the program serves. */
@Command(name = "export", mixinStandardHelpOptions = true)
public final class ExportCommand implements Callable<Integer> {
  private final Say say;
  private final PrintStream err;

  @Parameters(paramLabel = "OUT.zip", descriptionKey = "archive")
  private @Nullable Path file;

  @Mixin private final PracticeOption practice = new PracticeOption();

  public ExportCommand(Say say, PrintStream err) {
    this.say = say;
    this.err = err;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    if (file == null) {
      throw new BadInput("export", Message.of("backup.no-name"));
    }
    if (Files.exists(file)) {
      throw new BadInput(file.toString(), Message.of("backup.exists"));
    }
    Path parent = file.toAbsolutePath().getParent();
    if (parent != null && !Files.isDirectory(parent)) {
      throw new BadInput(file.toString(), Message.of("fault.no-folder", parent.toString()));
    }
    try (Database database = Place.there(practice.folder())) {
      Manifest manifest = Archive.write(database, file, Clock.systemUTC().instant());
      err.println(say.at("backup.exported", manifest.tables().size(), manifest.rows(), file));
      err.flush();
      return 0;
    }
  }
}
