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
import kerfwright.app.storage.people.StoredAccounts;
import kerfwright.planner.casework.CutCase;

/** Serves the pages from the command line until the process is ended. */
public final class Serving {
  private Serving() {}

  /** Starts, says where, and waits. */
  public static int serve(Wiring wiring, ServeOptions options, Terminal terminal) throws BadInput {
    List<CutCase> examples = options.demo() ? wiring.demoCases().read() : List.of();
    OpenPractice drawer = OpenPractice.of(options);
    Entrance entrance = entrance(options, drawer);
    Javalin server = WebServer.create(wiring, drawer, examples, options.demo(), entrance);
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
      throw new BadInput("--port", "port " + options.port() + " is in use; choose another one");
    }
    say(terminal, entrance, server.port());
    if (drawer.isTemporary()) {
      terminal.err().println("The drawer is not kept beyond that; --data DIR keeps it.");
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
    boolean people = !new StoredAccounts(practice.database()).all().isEmpty();
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
        throw new BadInput(
            "--lan",
            "needs --data, or --authority, or --certificate and --key: a certificate is kept");
      }
      folder = data.resolve("tls");
    }
    return Network.ofOwnAuthority(folder.toAbsolutePath(), wanted.names(), Clock.systemUTC());
  }

  private static void say(Terminal terminal, Entrance entrance, int port) {
    List<String> told = new ArrayList<>();
    Network network = entrance.network();
    String token = entrance.doors().startToken();
    String code = entrance.firstCode();
    if (network != null) {
      String own = "https://" + network.best() + ":" + port + "/";
      terminal.out().println("Kerfwright is at " + own);
      told.add("On the practice's network, for people who sign in. Stop with Ctrl-C.");
      network
          .fingerprint()
          .ifPresent(
              print -> {
                told.add(
                    "A tablet trusts it after http://"
                        + network.best()
                        + ":"
                        + entrance.plainPort()
                        + "/pair, once it shows this fingerprint (SHA-256):");
                told.add("  " + print);
              });
      if (code != null) {
        told.add("First start: make the owner at " + own + "first with the one-time code " + code);
      }
    } else {
      String own = "http://localhost:" + port + "/";
      boolean byAddress = code != null && token != null;
      terminal.out().println("Kerfwright is at " + own + (byAddress ? "enter/" + token : ""));
      told.add("On this machine only (loopback)" + how(entrance) + ". Stop with Ctrl-C.");
      if (code != null) {
        told.add(
            byAddress
                ? "To have people sign in: Settings, People; the owner's one-time code is " + code
                : "First start: make the owner at /first with the one-time code " + code);
      }
    }
    terminal.out().flush();
    told.forEach(terminal.err()::println);
  }

  private static String how(Entrance entrance) {
    return switch (entrance.doors().kind()) {
      case OPEN -> ", without sign-in";
      case PROXY -> ", for the proxy under " + entrance.doors().names();
      default ->
          entrance.firstCode() == null ? "; people sign in" : ", for whoever has this address";
    };
  }
}
