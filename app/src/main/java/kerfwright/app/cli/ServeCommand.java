package kerfwright.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import kerfwright.app.Wiring;
import kerfwright.app.input.BadInput;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    description =
        "Starts the web pages: on this machine alone (loopback), or with --lan on the practice's network.")
final class ServeCommand implements Callable<Integer> {
  private final Wiring wiring;
  private final Terminal terminal;

  @Option(
      names = "--demo",
      description =
          "Bring an invented practice with drawer and cases; on this machine, without sign-in.")
  private boolean demo;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "7330",
      description = "Port, 0 for any free one (default ${DEFAULT-VALUE}).")
  private int port;

  @Option(
      names = "--data",
      paramLabel = "DIR",
      description =
          "Folder that keeps the drawer; made at first start. A drawer.csv in it is taken over then."
              + " KERFWRIGHT_DATABASE=jdbc:postgresql:... keeps it in PostgreSQL instead.")
  private @Nullable Path data;

  @Mixin private final NetworkOptions network = new NetworkOptions();

  @Mixin private final OperationsOption operations = new OperationsOption();

  ServeCommand(Wiring wiring, Terminal terminal) {
    this.wiring = wiring;
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput {
    if (port < 0 || port > 65535) {
      throw new BadInput("--port", "must be 0 to 65535, found " + port);
    }
    network.check(demo);
    operations.take();
    return wiring.server().serve(wiring, new ServeOptions(demo, port, data, network), terminal);
  }
}
