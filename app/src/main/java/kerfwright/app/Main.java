package kerfwright.app;

import kerfwright.app.cli.Commands;
import kerfwright.app.cli.Terminal;

/** Where the program begins. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    Terminal terminal = Terminal.ofProcess();
    int code;
    try {
      code = Commands.run(Wiring.production(), terminal, arguments);
    } catch (Error broken) {
      code = terminal.broken("kerfwright", broken);
    }
    System.exit(code);
  }
}
