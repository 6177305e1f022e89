package kerfwright.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import kerfwright.app.Wiring;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Bounds;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "serve", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
  private final Wiring wiring;
  private final Terminal terminal;

  @Option(names = "--demo")
  private boolean demo;

  @Option(names = "--port", paramLabel = "N", defaultValue = "7330")
  private int port;

  @Option(names = "--data", paramLabel = "DIR")
  private @Nullable Path data;

  @Mixin private final NetworkOptions network = new NetworkOptions();

  @Mixin private final OperationsOption operations = new OperationsOption();

  ServeCommand(Wiring wiring, Terminal terminal) {
    this.wiring = wiring;
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput {
    Bounds.from(0, 65_535, "").check("--port", port);
    network.check(demo);
    operations.take();
    return wiring.server().serve(wiring, new ServeOptions(demo, port, data, network), terminal);
  }
}
