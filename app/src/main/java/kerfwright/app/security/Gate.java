package kerfwright.app.security;

import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import jakarta.servlet.DispatcherType;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.EnumSet;
import java.util.Set;
import org.eclipse.jetty.ee10.servlet.FilterHolder;

/**
 * Lets calls in. Only by the names of this server; only who the route allows; forms and API calls
 * only from our own pages or as JSON; and no page may load anything from elsewhere.
 */
public final class Gate {
  /** Address listened on where nothing outside this machine is to reach it. */
  public static final String LOOPBACK = "127.0.0.1";

  /** Largest request body, in bytes. */
  public static final long LARGEST_BODY = 1024 * 1024 + 1024;

  /** Largest file handed in by a form. */
  private static final long LARGEST_FILE_MB = 9;

  private static final int LARGEST_HEADERS = 32 * 1024;

  static final String CONTENT_POLICY =
      "default-src 'none'; object-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src"
          + " 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private static final String A_YEAR_OF_TLS = "max-age=31536000; includeSubDomains";

  private final Doors doors;
  private final Guard guard;

  public Gate(Doors doors, Guard guard) {
    this.doors = doors;
    this.guard = guard;
  }

  /** Puts the gate before everything else of this server. */
  public void install(JavalinConfig config) {
    if (doors.onlyThisMachine()) {
      config.jetty.host = LOOPBACK;
    }
    config.http.maxRequestSize = LARGEST_BODY;
    config.jetty.multipartConfig.maxFileSize(LARGEST_FILE_MB, SizeUnit.MB);
    config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_FILE_MB + 1, SizeUnit.MB);
    config.jetty.modifyHttpConfiguration(
        http -> {
          http.setRequestHeaderSize(LARGEST_HEADERS);
          http.setSendServerVersion(false);
        });
    config.jetty.modifyServletContextHandler(
        handler -> {
          FilterHolder plain = new FilterHolder(new PlainRequests());
          plain.setAsyncSupported(true);
          handler.addFilter(plain, "/*", EnumSet.of(DispatcherType.REQUEST));
        });
    config.routes.before(this::everyCall);
    config.routes.beforeMatched(this::matchedCall);
  }

  private void everyCall(Context call) {
    headers(call);
    if (doors.onlyThisMachine() && !fromThisMachine(call.ip())) {
      throw new ForbiddenResponse("machine");
    }
    if (!doors.answersTo(call.header("Host"))) {
      throw new ForbiddenResponse("name");
    }
    boolean plain = doors.kind() == Doors.Kind.NETWORK && !call.scheme().equals("https");
    if (plain && !call.path().matches("/pair(/authority\\.crt)?|/static/[^/]+|/theme\\.css")) {
      throw new ForbiddenResponse("tls");
    }
  }

  private void matchedCall(Context call) {
    Access access = access(call);
    boolean changes = call.method() != HandlerType.GET && call.method() != HandlerType.HEAD;
    if (changes && !fromOwnPage(call, doors.secure())) {
      throw new ForbiddenResponse("page");
    }
    guard.let(call, access);
  }

  /** The one right the route names; a route that names none, or several, is shut. */
  private static Access access(Context call) {
    if (call.routeRoles().size() == 1
        && call.routeRoles().iterator().next() instanceof Access access) {
      return access;
    }
    throw new ForbiddenResponse("nobody");
  }

  private void headers(Context call) {
    plainHeaders(call);
    if (doors.kind() == Doors.Kind.PROXY || call.scheme().equals("https")) {
      call.header("Strict-Transport-Security", A_YEAR_OF_TLS);
    }
  }

  static void plainHeaders(Context call) {
    call.header("Content-Security-Policy", CONTENT_POLICY);
    call.header("X-Content-Type-Options", "nosniff");
    call.header("X-Frame-Options", "DENY");
    call.header("Referrer-Policy", "same-origin");
    call.header("Cross-Origin-Opener-Policy", "same-origin");
    call.header("Cross-Origin-Resource-Policy", "same-origin");
    call.header("Permissions-Policy", "camera=(), microphone=(), geolocation=()");
    call.header("Cache-Control", "no-store");
  }

  static boolean fromThisMachine(String address) {
    try {
      return InetAddress.getByName(address).isLoopbackAddress();
    } catch (UnknownHostException unknown) {
      return false;
    }
  }

  static boolean fromOwnPage(Context call, boolean secure) {
    String site = call.header("Sec-Fetch-Site");
    if (site != null && !Set.of("same-origin", "none").contains(site)) {
      return false;
    }
    String origin = call.header("Origin");
    String own = (secure ? "https://" : "http://") + call.header("Host");
    if (origin != null && !origin.equals(own)) {
      return false;
    }
    // a page elsewhere cannot send this type without asking first, and the answer is no
    String type = call.contentType();
    return site != null || origin != null || type != null && type.startsWith("application/json");
  }
}
