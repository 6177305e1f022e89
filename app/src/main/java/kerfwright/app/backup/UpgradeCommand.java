package kerfwright.app.backup;

import java.io.PrintStream;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Rights;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Brings a practice to this program's schema, and lets a role of the server work with it. */
@Command(
    name = "upgrade",
    mixinStandardHelpOptions = true,
    description = {
      "Brings what the practice keeps to this program's schema, as serve does at its start.",
      "Of use where serve itself works with a role of PostgreSQL that owns nothing."
    })
public final class UpgradeCommand implements Callable<Integer> {
  private final PrintStream err;

  @Mixin private final PracticeOption practice = new PracticeOption();

  @Option(
      names = "--role",
      paramLabel = "ROLE",
      description = "Gives this role of the PostgreSQL what serve needs, and takes all else away.")
  private @Nullable String role;

  public UpgradeCommand(PrintStream err) {
    this.err = err;
  }

  @Override
  public Integer call() throws BadInput {
    try (Database database = Place.there(practice.folder())) {
      if (role != null) {
        Rights.give(database, role);
      }
      err.println("The practice is at this program's schema.");
      err.flush();
      return 0;
    }
  }
}
