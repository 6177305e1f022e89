package kerfwright.app.backup;

import java.io.PrintStream;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Looks a practice over and says what to do. */
@Command(
    name = "doctor",
    mixinStandardHelpOptions = true,
    description = {
      "Looks set-up, storage, chain, backups, clock and disk over, and says what to do.",
      "Writes nothing; exit code 1 where something needs to be done now."
    })
public final class DoctorCommand implements Callable<Integer> {
  private final PrintStream out;

  @Mixin private final PracticeOption practice = new PracticeOption();

  @Option(
      names = "--language",
      paramLabel = "LANG",
      defaultValue = "en",
      description = "en or de (default ${DEFAULT-VALUE}).")
  private String language = "en";

  public DoctorCommand(PrintStream out) {
    this.out = out;
  }

  @Override
  public Integer call() throws BadInput {
    Language wanted = Language.byId(language).orElse(null);
    if (wanted == null) {
      throw new BadInput("--language", "must be en or de, found " + language);
    }
    Say say = Say.in(wanted);
    List<Checkup.Finding> found = Checkup.of(practice.folder(), Clock.systemDefaultZone());
    for (Checkup.Finding one : found) {
      String state =
          switch (one.state()) {
            case WELL -> say.at("doctor.well");
            case WATCH -> say.at("doctor.watch");
            case ILL -> say.at("doctor.ill");
          };
      Object[] values = one.values().stream().map(String::valueOf).toArray();
      out.println(state + "  " + say.at(one.key(), values));
    }
    out.flush();
    return found.stream().anyMatch(one -> one.state() == Checkup.State.ILL) ? 1 : 0;
  }
}
