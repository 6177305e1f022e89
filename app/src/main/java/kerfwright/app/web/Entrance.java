package kerfwright.app.web;

import kerfwright.app.network.Network;
import kerfwright.app.security.Doors;
import org.jspecify.annotations.Nullable;

/**
 * Where the server listens and how one comes in.
 *
 * @param doors how one comes in
 * @param port port, 0 for any free one
 * @param firstCode what makes the first owner, null where nobody is to be made
 * @param network the practice's network, null where the server is not on one
 */
record Entrance(Doors doors, int port, @Nullable String firstCode, @Nullable Network network) {
  Entrance(Doors doors, int port, @Nullable String firstCode) {
    this(doors, port, firstCode, null);
  }

  /** Where devices are made to trust the practice's authority, without TLS. */
  int plainPort() {
    return port == 0 ? 0 : port + 1;
  }
}
