package kerfwright.app.backup;

import java.io.PrintStream;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.words.Say;
import kerfwright.quantity.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Looks a practice over and says what to do. */
@Command(name = "doctor", mixinStandardHelpOptions = true)
public final class DoctorCommand implements Callable<Integer> {
  private final Say say;
  private final PrintStream out;

  @Mixin private final PracticeOption practice = new PracticeOption();

  public DoctorCommand(Say say, PrintStream out) {
    this.say = say;
    this.out = out;
  }

  @Override
  public Integer call() throws BadInput {
    List<Checkup.Finding> found = Checkup.of(practice.folder(), Clock.systemDefaultZone());
    for (Checkup.Finding one : found) {
      String state = say.at("doctor." + one.state().name().toLowerCase(Locale.ROOT));
      Object[] values =
          one.values().stream()
              .map(value -> value instanceof Message ? value : value.toString())
              .toArray();
      out.println(state + "  " + say.at(one.key(), values));
    }
    out.flush();
    return found.stream().anyMatch(one -> one.state() == Checkup.State.ILL) ? 1 : 0;
  }
}
