package kerfwright.app.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Ports for tests that stop a server and start it again at the same address: below the range from
 * which the machine hands out ports, so that no other test is given one meanwhile.
 */
final class Port {
  private static final int LOWEST = 18_000;
  private static final int HIGHEST = 30_000;

  private Port() {}

  /** A port nobody listens at, with the one after it. */
  static int free() {
    while (true) {
      int port = ThreadLocalRandom.current().nextInt(LOWEST, HIGHEST) & ~1;
      if (isFree(port) && isFree(port + 1)) {
        return port;
      }
    }
  }

  private static boolean isFree(int port) {
    try (ServerSocket socket = new ServerSocket(port, 1, InetAddress.getLoopbackAddress())) {
      return socket.isBound();
    } catch (IOException taken) {
      return false;
    }
  }
}
