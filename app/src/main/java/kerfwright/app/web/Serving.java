package kerfwright.app.web;

import io.javalin.Javalin;
import io.javalin.util.JavalinBindException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import kerfwright.app.Wiring;
import kerfwright.app.cli.NetworkOptions;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.cli.Terminal;
import kerfwright.app.input.BadInput;
import kerfwright.app.network.Network;
import kerfwright.app.security.Doors;
import kerfwright.app.security.Secrets;
import kerfwright.app.storage.people.Accounts;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.CutCase;
import kerfwright.quantity.Message;

/** Serves the pages from the command line until the process is ended. */
public final class Serving {
  private Serving() {}

  /** Starts, says where, and waits. */
  public static int serve(Wiring wiring, ServeOptions options, Terminal terminal) throws BadInput {
    List<CutCase> examples = options.demo() ? wiring.demoCases().read() : List.of();
    OpenPractice drawer = OpenPractice.of(options);
    Entrance entrance = entrance(options, drawer);
    Javalin server =
        new WebServer(wiring, drawer, examples, options.demo(), entrance).create(drawer, entrance);
    try {
      server.start();
      if (drawer.backups() != null) {
        drawer.backups().start();
      }
      if (drawer.watch() != null) {
        drawer.watch().start();
      }
    } catch (JavalinBindException taken) {
      drawer.close();
      throw new BadInput(
          "--port", Message.of("command.serve-port-taken", String.valueOf(options.port())));
    }
    tell(terminal, entrance, server.port());
    if (drawer.isTemporary()) {
      terminal.err().println(terminal.say().at("command.serve-not-kept"));
    }
    terminal.err().flush();
    CountDownLatch forever = new CountDownLatch(1);
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  server.stop();
                  if (entrance.network() != null) {
                    entrance.network().close();
                  }
                  drawer.close();
                  forever.countDown();
                }));
    try {
      forever.await();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    return Terminal.DONE;
  }

  private static Entrance entrance(ServeOptions options, OpenPractice practice) throws BadInput {
    if (options.demo()) {
      return new Entrance(Doors.open(), options.port(), null);
    }
    boolean people = !new Accounts(practice.database()).all().isEmpty();
    String code = people ? null : Secrets.code();
    NetworkOptions wanted = options.network();
    if (wanted.lan()) {
      Network network = network(options);
      Doors doors = Doors.reached(Doors.Kind.NETWORK, network.names());
      return new Entrance(doors, options.port(), code, network);
    }
    Doors doors =
        wanted.behindProxy()
            ? Doors.reached(Doors.Kind.PROXY, Set.copyOf(wanted.names()))
            : Doors.here(StartToken.of(options.data()));
    return new Entrance(doors, options.port(), code);
  }

  private static Network network(ServeOptions options) throws BadInput {
    NetworkOptions wanted = options.network();
    Path certificate = wanted.certificate();
    Path key = wanted.key();
    if (certificate != null && key != null) {
      return Network.ofFiles(certificate, key, wanted.names());
    }
    Path folder = wanted.authority();
    if (folder == null) {
      Path data = options.data();
      if (data == null) {
        throw new BadInput("--lan", Message.of("command.serve-lan-where"));
      }
      folder = data.resolve("tls");
    }
    return Network.ofOwnAuthority(folder.toAbsolutePath(), wanted.names(), Clock.systemUTC());
  }

  private static void tell(Terminal terminal, Entrance entrance, int port) {
    Say say = terminal.say();
    List<String> told = new ArrayList<>();
    Network network = entrance.network();
    String token = entrance.doors().startToken();
    String code = entrance.firstCode();
    boolean byAddress = network == null && code != null && token != null;
    String own =
        network == null
            ? "http://localhost:" + port + "/"
            : "https://" + network.best() + ":" + port + "/";
    terminal.out().println(say.at("command.serve-at", own + (byAddress ? "enter/" + token : "")));
    terminal.out().flush();
    if (network != null) {
      told.add(say.at("command.serve-lan"));
      String pair = "http://" + network.best() + ":" + entrance.plainPort() + "/pair";
      network
          .fingerprint()
          .ifPresent(print -> told.add(say.at("command.serve-pair", pair) + "\n  " + print));
    } else {
      told.add(how(say, entrance));
    }
    if (code != null) {
      told.add(
          byAddress
              ? say.at("command.serve-code", code)
              : say.at("command.serve-first", own + "first", code));
    }
    told.forEach(terminal.err()::println);
  }

  private static String how(Say say, Entrance entrance) {
    return switch (entrance.doors().kind()) {
      case OPEN -> say.at("command.serve-open");
      case PROXY -> say.at("command.serve-proxy", String.join(", ", entrance.doors().names()));
      default ->
          say.at(entrance.firstCode() == null ? "command.serve-people" : "command.serve-address");
    };
  }
}
