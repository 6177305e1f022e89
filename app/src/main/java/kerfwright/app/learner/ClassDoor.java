package kerfwright.app.learner;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.util.JavalinBindException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.security.SecureRandom;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import kerfwright.app.security.ClassGate;
import kerfwright.app.security.Role;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.teaching.ClassRoom;
import kerfwright.practice.teaching.QuestionSet;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The door of a class: a listener on the machine's network address, on a port of its own, open
 * while a class is and for four hours at most. Only the phones' pages and the files they load stand
 * behind it.
 */
final class ClassDoor {
  private static final Logger LOG = LoggerFactory.getLogger(ClassDoor.class);
  private static final Set<String> FILES = Set.of("page.css", "learner.css", "htmx.js", "icon.svg");
  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
  private static final int CODE = 5;
  private static final int USUAL_PORT = 8790;
  private static final long LONGEST_H = 4;

  private final Templates templates;
  private final Handler files;
  private final SecureRandom chance = new SecureRandom();
  private @Nullable Open open;

  /** A class that is open. */
  record Open(ClassRoom room, Javalin server, String address) {
    /** What phones type or scan. */
    String url() {
      return "http://" + address + ":" + server.port() + "/class/" + room.code();
    }
  }

  /**
   * @param files serves a file of the pages by its name
   */
  ClassDoor(Templates templates, Handler files) {
    this.templates = templates;
    this.files = files;
  }

  synchronized Optional<Open> now() {
    return Optional.ofNullable(open);
  }

  /** Opens a class on an address of this machine; the one before is closed. */
  synchronized Open open(QuestionSet set, String address) {
    close();
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < CODE; i++) {
      code.append(LETTERS.charAt(chance.nextInt(LETTERS.length())));
    }
    ClassRoom room = new ClassRoom(code.toString(), set, QuestionWords.of(set));
    Javalin server;
    try {
      server = listener(room, address, USUAL_PORT).start();
    } catch (JavalinBindException taken) {
      server = listener(room, address, 0).start();
    }
    Open now = new Open(room, server, address);
    open = now;
    CompletableFuture.delayedExecutor(LONGEST_H, TimeUnit.HOURS).execute(() -> close(now));
    return now;
  }

  private synchronized void close(Open one) {
    if (one.equals(open)) {
      close();
    }
  }

  synchronized void close() {
    Open was = open;
    if (was != null) {
      was.server().stop();
      open = null;
    }
  }

  private Javalin listener(ClassRoom room, String address, int port) {
    PhonePages phones = new PhonePages(room, templates, chance);
    return Javalin.create(
        config -> {
          config.startup.showJavalinBanner = false;
          config.startup.startupWatcherEnabled = false;
          config.jetty.port = port;
          ClassGate.install(config, address);
          phones.routes(config);
          config.routes.get("/static/{name}", this::file, Role.CLASS);
          config.routes.exception(
              HttpResponseException.class, (failure, call) -> problem(call, failure.getStatus()));
          config.routes.exception(
              Exception.class,
              (failure, call) -> {
                LOG.error("{} {} failed", call.method(), call.path(), failure);
                problem(call, HttpStatus.INTERNAL_SERVER_ERROR.getCode());
              });
          config.routes.error(404, "*", call -> problem(call, 404));
        });
  }

  private void file(Context call) throws Exception {
    if (!FILES.contains(call.pathParam("name"))) {
      throw new NotFoundResponse();
    }
    files.handle(call);
  }

  private void problem(Context call, int status) {
    Say say = templates.say(call);
    call.status(status).contentType("text/plain; charset=utf-8");
    call.result(say.at(status == 404 ? "learner.no-class" : "learner.not-from-here"));
  }

  /** An address other machines of the network reach this one by. */
  static Optional<String> networkAddress() {
    try {
      for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
        if (each.isUp() && !each.isLoopback() && !each.isPointToPoint()) {
          for (InetAddress one : Collections.list(each.getInetAddresses())) {
            if (one instanceof Inet4Address && !one.isLinkLocalAddress()) {
              return Optional.of(one.getHostAddress());
            }
          }
        }
      }
    } catch (SocketException none) {
      LOG.warn("The network cannot be asked", none);
    }
    return Optional.empty();
  }
}
