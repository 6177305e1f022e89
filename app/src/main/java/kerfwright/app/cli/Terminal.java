package kerfwright.app.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.storage.StorageFault;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.NearestName;
import kerfwright.quantity.Message;
import picocli.CommandLine;

/**
 * Where a command writes: results to out, messages to err, both UTF-8 whatever the locale says.
 *
 * @param out for results
 * @param err for messages
 * @param say the language people read
 */
public record Terminal(PrintStream out, PrintStream err, Say say) {
  /** Done. */
  public static final int DONE = 0;

  /** The planner said no; the finding is printed. */
  public static final int REFUSED = 1;

  /** What was handed in cannot be used. */
  public static final int BAD_INPUT = 2;

  /** A fault of the program itself. */
  public static final int BROKEN = 3;

  public Terminal(PrintStream out, PrintStream err) {
    this(out, err, Say.in(Language.ENGLISH));
  }

  Terminal in(Language language) {
    return new Terminal(out, err, Say.in(language));
  }

  public static Terminal ofProcess() {
    return new Terminal(stream(FileDescriptor.out), stream(FileDescriptor.err));
  }

  private static PrintStream stream(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }

  /** Prints text for people; no-break spaces become plain ones so that searching finds them. */
  public void print(String text) {
    out.print(plain(text));
    out.flush();
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ');
  }

  void printJson(String json) {
    out.print(json);
    out.flush();
  }

  /** Tells something beside the result. */
  void tell(String key, Object... values) {
    note("kerfwright: " + say.at(key, values));
  }

  private void note(String text) {
    err.println(plain(text));
    err.flush();
  }

  int badInput(BadInput bad) {
    for (Fault fault : bad.faults()) {
      note(fault.in(say));
    }
    return BAD_INPUT;
  }

  /** Anything a command did not expect: one line, never a stack trace. */
  public int handle(Exception failure, CommandLine command) {
    if (failure instanceof BadInput bad) {
      return badInput(bad);
    }
    Optional<StorageFault> storage = StorageFault.of(failure);
    if (storage.isPresent()) {
      String place = StorageFault.place(failure);
      note("kerfwright: " + (place.isEmpty() ? "" : place + ": ") + say.at(storage.get().words()));
      return BAD_INPUT;
    }
    return broken(command.getCommandName(), failure);
  }

  private static String label(CommandLine.Model.ArgSpec taken) {
    return taken instanceof CommandLine.Model.OptionSpec option
        ? option.longestName()
        : taken.paramLabel();
  }

  /** What was typed is not what a command takes. */
  int wrongUse(CommandLine.ParameterException failure) {
    CommandLine command = failure.getCommandLine();
    String name = command.getCommandSpec().qualifiedName();
    if (failure instanceof CommandLine.UnmatchedArgumentException unmatched) {
      String typed = String.join(" ", unmatched.getUnmatched());
      List<String> known = new ArrayList<>(command.getSubcommands().keySet());
      known.addAll(command.getCommandSpec().optionsMap().keySet());
      String nearest = NearestName.nearest(typed, known).orElse(null);
      note(new Fault(name, 0, "", Message.of("command.unknown", typed), nearest).in(say));
    } else if (failure instanceof CommandLine.MissingParameterException missing) {
      String needed =
          missing.getMissing().stream().map(Terminal::label).collect(Collectors.joining(", "));
      note(new Fault(name, 0, "", Message.of("command.missing", needed), null).in(say));
    } else {
      String value = String.valueOf(failure.getValue());
      CommandLine.Model.ArgSpec taken = failure.getArgSpec();
      String option = taken == null ? "" : label(taken);
      note(new Fault(name, 0, option, Message.of("command.wrong-value", value), null).in(say));
    }
    tell("command.see-help", name);
    return BAD_INPUT;
  }

  /** A fault of the program: named in one line, with its deepest cause. */
  public int broken(String where, Throwable failure) {
    Throwable deepest = failure;
    while (deepest.getCause() != null) {
      deepest = deepest.getCause();
    }
    tell(
        "command.broken",
        where,
        deepest.getClass().getSimpleName(),
        String.valueOf(deepest.getMessage()));
    if (System.getenv("KERFWRIGHT_TRACE") != null) {
      failure.printStackTrace(err);
      err.flush();
    }
    return BROKEN;
  }
}
