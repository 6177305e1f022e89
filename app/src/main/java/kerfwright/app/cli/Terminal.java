package kerfwright.app.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.storage.StorageFault;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import picocli.CommandLine;

/**
 * Where a command writes: results to out, messages to err, both UTF-8 whatever the locale says.
 *
 * @param out for results
 * @param err for messages
 */
public record Terminal(PrintStream out, PrintStream err) {
  /** Done. */
  public static final int DONE = 0;

  /** The planner said no; the finding is printed. */
  public static final int REFUSED = 1;

  /** What was handed in cannot be used. */
  public static final int BAD_INPUT = 2;

  /** A fault of the program itself. */
  public static final int BROKEN = 3;

  public static Terminal ofProcess() {
    return new Terminal(stream(FileDescriptor.out), stream(FileDescriptor.err));
  }

  private static PrintStream stream(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }

  /** Prints text for people; no-break spaces become plain ones so that searching finds them. */
  void print(String text) {
    out.print(text.replace('\u00A0', ' '));
    out.flush();
  }

  void printJson(String json) {
    out.print(json);
    out.flush();
  }

  void say(String message) {
    err.println("kerfwright: " + message);
    err.flush();
  }

  int badInput(BadInput bad) {
    for (Fault fault : bad.faults()) {
      err.println(fault.oneLine());
    }
    err.flush();
    return BAD_INPUT;
  }

  /** Anything a command did not expect: one line, never a stack trace. */
  int handle(Exception failure, CommandLine command) {
    if (failure instanceof BadInput bad) {
      return badInput(bad);
    }
    Optional<StorageFault> storage = StorageFault.of(failure);
    if (storage.isPresent()) {
      String place = StorageFault.place(failure);
      say(
          (place.isEmpty() ? "" : place + ": ")
              + Say.in(Language.ENGLISH).at(storage.get().words()));
      return BAD_INPUT;
    }
    return broken(command.getCommandName(), failure);
  }

  /** A fault of the program: named in one line, with its deepest cause. */
  public int broken(String where, Throwable failure) {
    Throwable deepest = failure;
    while (deepest.getCause() != null) {
      deepest = deepest.getCause();
    }
    say(
        "the program failed in '"
            + where
            + "' ("
            + deepest.getClass().getSimpleName()
            + ": "
            + deepest.getMessage()
            + "). This is a fault of the program, not of your file; please report it.");
    if (System.getenv("KERFWRIGHT_TRACE") != null) {
      failure.printStackTrace(err);
      err.flush();
    }
    return BROKEN;
  }
}
