package kerfwright.app.security;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * How one comes in.
 *
 * @param kind who can reach the server
 * @param names host names it answers to, in lower case
 * @param startToken what the printed address carries, null where it carries nothing
 */
public record Doors(Kind kind, Set<String> names, @Nullable String startToken) {
  private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

  /** Who can reach the server. */
  public enum Kind implements Identified {
    /** This machine, without any sign-in: the invented practice. */
    OPEN,
    /** This machine, with the printed address or by signing in. */
    HERE,
    /** The practice's network, over TLS of our own. */
    NETWORK,
    /** A proxy on this machine, which does the TLS. */
    PROXY
  }

  public Doors {
    names =
        names.stream()
            .map(one -> one.toLowerCase(Locale.ROOT))
            .collect(Collectors.toUnmodifiableSet());
  }

  /** Without sign-in; for the invented practice. */
  public static Doors open() {
    return new Doors(Kind.OPEN, LOOPBACK, null);
  }

  /** For whoever has the printed address. */
  public static Doors here(String startToken) {
    return new Doors(Kind.HERE, LOOPBACK, startToken);
  }

  /** On the network or behind a proxy, under these names and those of this machine. */
  public static Doors reached(Kind kind, Set<String> names) {
    Set<String> all = Stream.concat(names.stream(), LOOPBACK.stream()).collect(Collectors.toSet());
    return new Doors(kind, all, null);
  }

  /** True where the browser speaks TLS. */
  public boolean secure() {
    return kind == Kind.NETWORK || kind == Kind.PROXY;
  }

  /** True where only this machine itself may connect. */
  boolean onlyThisMachine() {
    return kind != Kind.NETWORK;
  }

  boolean answersTo(@Nullable String host) {
    return host != null
        && names.contains(host.replaceFirst(":\\d{1,5}$", "").toLowerCase(Locale.ROOT));
  }

  /** A cookie that only this server set, over TLS, begins so (RFC 6265bis). */
  String cookie(String name) {
    return secure() ? "__Host-" + name : name;
  }
}
