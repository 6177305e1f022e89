package kerfwright.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import kerfwright.app.cli.Commands;
import kerfwright.app.cli.Terminal;

/** One run of a command within the test's own process. */
public record Run(int code, String out, String err) {
  public static Run of(Wiring wiring, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal = new Terminal(stream(out), stream(err));
    int code = Commands.run(wiring, terminal, arguments);
    return new Run(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  public static Run of(String... arguments) {
    return of(Wiring.production(), arguments);
  }

  private static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }
}
