package kerfwright.app.security;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import jakarta.servlet.DispatcherType;
import java.util.EnumSet;
import org.eclipse.jetty.ee10.servlet.FilterHolder;

/**
 * Stands before a listener that phones on the same network reach, open only while a class is. It
 * knows no page of the practice: a route answers only where it names {@link Access#CLASS}. Calls
 * come by the address shown (against DNS rebinding), answers from its own pages, bodies are small.
 */
public final class ClassGate {
  private static final long LARGEST_BODY = 2048;
  private static final int LARGEST_HEADERS = 8 * 1024;

  private ClassGate() {}

  /** Puts the gate before everything else of a listener on an address of this machine. */
  public static void install(JavalinConfig config, String address) {
    config.jetty.host = address;
    config.http.maxRequestSize = LARGEST_BODY;
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
    config.routes.before(
        call -> {
          Gate.plainHeaders(call);
          String host = call.header("Host");
          if (host == null || !host.replaceFirst(":\\d{1,5}$", "").equals(address)) {
            throw new ForbiddenResponse("address");
          }
        });
    config.routes.beforeMatched(ClassGate::matchedCall);
  }

  private static void matchedCall(Context call) {
    boolean reads = call.method() == HandlerType.GET || call.method() == HandlerType.HEAD;
    if (!call.routeRoles().contains(Access.CLASS) || !reads && !Gate.fromOwnPage(call, false)) {
      throw new ForbiddenResponse("machine");
    }
  }
}
