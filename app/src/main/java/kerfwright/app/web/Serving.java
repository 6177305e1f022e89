package kerfwright.app.web;

import io.javalin.Javalin;
import io.javalin.util.JavalinBindException;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import kerfwright.app.Wiring;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.cli.Terminal;
import kerfwright.app.input.BadInput;
import kerfwright.planner.casework.CutCase;

/** Serves the pages from the command line until the process is ended. */
public final class Serving {
  private Serving() {}

  /** Starts, says where, and waits. */
  public static int serve(Wiring wiring, ServeOptions options, Terminal terminal) throws BadInput {
    List<CutCase> examples = options.demo() ? wiring.demoCases().read() : List.of();
    OpenPractice drawer = OpenPractice.of(options);
    Javalin server = WebServer.create(wiring, drawer, examples, options.demo(), options.port());
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
    terminal.out().println("Kerfwright is at http://localhost:" + server.port() + "/");
    terminal.out().flush();
    terminal
        .err()
        .println("On this machine only (loopback): there is no sign-in yet. Stop with Ctrl-C.");
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
}
