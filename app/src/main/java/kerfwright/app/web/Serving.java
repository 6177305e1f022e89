package kerfwright.app.web;

import io.javalin.Javalin;
import io.javalin.util.JavalinBindException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import kerfwright.app.Wiring;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.cli.Terminal;
import kerfwright.app.drawerfile.DrawerFile;
import kerfwright.app.input.BadInput;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;

/** Serves the pages from the command line until the process is ended. */
public final class Serving {
  private Serving() {}

  /** Starts, says where, and waits. */
  public static int serve(Wiring wiring, ServeOptions options, Terminal terminal) throws BadInput {
    DrawerSnapshot drawer = drawer(wiring, options);
    List<CutCase> examples = options.demo() ? wiring.demoCases().read() : List.of();
    Javalin server = WebServer.create(wiring, drawer, examples, options.demo(), options.port());
    try {
      server.start();
    } catch (JavalinBindException taken) {
      throw new BadInput("--port", "port " + options.port() + " is in use; choose another one");
    }
    terminal.out().println("Kerfwright is at http://localhost:" + server.port() + "/");
    terminal.out().flush();
    terminal
        .err()
        .println("On this machine only (loopback): there is no sign-in yet. Stop with Ctrl-C.");
    terminal.err().flush();
    CountDownLatch forever = new CountDownLatch(1);
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  server.stop();
                  forever.countDown();
                }));
    try {
      forever.await();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    return Terminal.DONE;
  }

  private static DrawerSnapshot drawer(Wiring wiring, ServeOptions options) throws BadInput {
    Path folder = options.data();
    if (folder == null) {
      return options.demo() ? wiring.demoDrawer().read() : new DrawerSnapshot(List.of());
    }
    if (!Files.isDirectory(folder)) {
      throw new BadInput("--data", "there is no folder " + folder);
    }
    Path own = folder.resolve("drawer.csv");
    if (Files.exists(own)) {
      return new DrawerFile(wiring.instruments()).read(own);
    }
    return options.demo() ? wiring.demoDrawer().read() : new DrawerSnapshot(List.of());
  }
}
