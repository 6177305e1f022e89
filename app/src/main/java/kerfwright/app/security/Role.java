package kerfwright.app.security;

import io.javalin.security.RouteRole;

/** Who may call a route. There is no sign-in yet: whoever sits at this machine, and a class. */
public enum Role implements RouteRole {
  /** Anyone on this machine; the server listens on loopback only. */
  LOCAL,
  /** Phones of a class, by a listener of its own; no route of the practice names it. */
  CLASS
}
