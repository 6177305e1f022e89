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
 * Stands before every route. Denied by default: a route that names no role answers 403. Further:
 * only calls from this machine, only under a loopback host name (against DNS rebinding), changes
 * and API calls only from our own pages or as JSON, and no page may load anything from elsewhere.
 */
public final class Gate {
  /** Address listened on: nothing outside this machine reaches it. */
  public static final String LOOPBACK = "127.0.0.1";

  /** Largest request body, in bytes. */
  public static final long LARGEST_BODY = 1024 * 1024 + 1024;

  /** Largest file handed in by a form. */
  private static final long LARGEST_FILE_MB = 9;

  private static final int LARGEST_HEADERS = 32 * 1024;

  static final String CONTENT_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src"
          + " 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private Gate() {}

  /** Puts the gate before everything else of this server. */
  public static void install(JavalinConfig config) {
    config.jetty.host = LOOPBACK;
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
    config.routes.before(Gate::everyCall);
    config.routes.beforeMatched(Gate::matchedCall);
  }

  private static void everyCall(Context call) {
    headers(call);
    if (!fromThisMachine(call.ip()) || !loopbackName(call.header("Host"))) {
      throw new ForbiddenResponse("Only this machine may call, by the name localhost");
    }
  }

  private static void matchedCall(Context call) {
    if (!call.routeRoles().contains(Role.LOCAL)) {
      throw new ForbiddenResponse("No role may call this");
    }
    if (call.method() != HandlerType.GET && call.method() != HandlerType.HEAD) {
      if (!fromOwnPage(call)) {
        throw new ForbiddenResponse("Only pages of this program may send this");
      }
    }
  }

  static void headers(Context call) {
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

  static boolean loopbackName(@org.jspecify.annotations.Nullable String host) {
    if (host == null) {
      return false;
    }
    String name = host.replaceFirst(":\\d{1,5}$", "");
    return Set.of("localhost", "127.0.0.1", "[::1]").contains(name);
  }

  static boolean fromOwnPage(Context call) {
    String site = call.header("Sec-Fetch-Site");
    if (site != null && !site.equals("same-origin") && !site.equals("none")) {
      return false;
    }
    String origin = call.header("Origin");
    if (origin != null && !origin.equals("http://" + call.header("Host"))) {
      return false;
    }
    // a page elsewhere cannot send this type without asking first, and the answer is no
    String type = call.contentType();
    return site != null || origin != null || type != null && type.startsWith("application/json");
  }
}
