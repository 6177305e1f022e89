package kerfwright.app.security;

import io.javalin.security.RouteRole;

/** Who may call a route. There is no sign-in yet, so there is one: whoever sits at this machine. */
public enum Role implements RouteRole {
  /** Anyone on this machine; the server listens on loopback only. */
  LOCAL
}
