package kerfwright.app.network;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * How this machine is called on the practice's network: the names given, its own, its addresses.
 *
 * @param names host names in lower case, those given first
 * @param addresses IPv4 addresses that are not routed on the Internet (RFC 1918, RFC 3927)
 */
record OwnNames(List<String> names, List<String> addresses) {
  OwnNames {
    names = List.copyOf(names);
    addresses = List.copyOf(addresses);
  }

  static OwnNames of(List<String> given) {
    Set<String> names = new LinkedHashSet<>();
    given.forEach(one -> names.add(one.toLowerCase(Locale.ROOT)));
    try {
      String host = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
      if (host.matches("[a-z0-9-]{1,63}")) {
        names.add(host);
        names.add(host + ".local");
      }
    } catch (UnknownHostException nameless) {
      // the addresses are enough
    }
    names.add("localhost");
    return new OwnNames(new ArrayList<>(names), found());
  }

  private static List<String> found() {
    List<String> found = new ArrayList<>();
    try {
      for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
        for (InetAddress one : Collections.list(each.getInetAddresses())) {
          if (one instanceof Inet4Address
              && (one.isSiteLocalAddress() || one.isLinkLocalAddress())) {
            found.add(one.getHostAddress());
          }
        }
      }
    } catch (SocketException unknown) {
      // the names are enough
    }
    Collections.sort(found);
    found.add("127.0.0.1");
    return found;
  }

  /** What a tablet is best led to: a name that was given, else an address, else the own name. */
  String best(List<String> given) {
    return !given.isEmpty() ? names.get(0) : addresses.size() > 1 ? addresses.get(0) : names.get(0);
  }

  Set<String> all() {
    Set<String> all = new LinkedHashSet<>(names);
    all.addAll(addresses);
    return all;
  }
}
