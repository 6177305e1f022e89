package kerfwright.app.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.util.BufferUtil;

/**
 * Whether the browser that asked still waits. It is looked at while its call is worked on, when the
 * server itself reads nothing of the line: a closed line reads as its end. A byte that comes
 * meanwhile is a next call sent before this one was answered; the line is closed after the answer
 * then, and the call is sent again, as HTTP asks for (RFC 9112, 9.3.2).
 */
final class Caller {
  private static final ThreadLocal<Caller> NOW = new ThreadLocal<>();

  private final EndPoint line;
  private final Context call;
  private final ByteBuffer next = BufferUtil.allocate(1);
  private boolean gone;

  private Caller(EndPoint line, Context call) {
    this.line = line;
    this.call = call;
  }

  /** From now on this thread works for that call. */
  static void is(Context call) {
    Optional.ofNullable(ServletContextRequest.getServletContextRequest(call.req()))
        .map(request -> request.getConnectionMetaData().getConnection().getEndPoint())
        .ifPresentOrElse(line -> NOW.set(new Caller(line, call)), NOW::remove);
  }

  /** True where whoever this thread works for has closed the line; false where nobody is known. */
  static boolean hasGone() {
    Caller caller = NOW.get();
    return caller != null && caller.looked();
  }

  private boolean looked() {
    if (!gone && BufferUtil.isEmpty(next)) {
      try {
        gone = line.fill(next) < 0;
      } catch (IOException broken) {
        gone = true;
      }
      if (!BufferUtil.isEmpty(next)) {
        call.header("Connection", "close");
      }
    }
    return gone;
  }
}
