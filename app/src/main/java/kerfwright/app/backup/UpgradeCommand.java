package kerfwright.app.backup;

import java.io.PrintStream;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Rights;
import kerfwright.app.words.Say;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Brings a practice to this program's schema, and lets a role of the server work with it. */
@Command(name = "upgrade", mixinStandardHelpOptions = true)
public final class UpgradeCommand implements Callable<Integer> {
  private final Say say;
  private final PrintStream err;

  @Mixin private final PracticeOption practice = new PracticeOption();

  @Option(names = "--role", paramLabel = "ROLE")
  private @Nullable String role;

  public UpgradeCommand(Say say, PrintStream err) {
    this.say = say;
    this.err = err;
  }

  @Override
  public Integer call() throws BadInput {
    try (Database database = Place.there(practice.folder())) {
      if (role != null) {
        Rights.give(database, role);
      }
      err.println(say.at("backup.upgraded"));
      err.flush();
      return 0;
    }
  }
}
