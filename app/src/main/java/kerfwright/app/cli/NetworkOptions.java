package kerfwright.app.cli;

import java.nio.file.Path;
import java.util.List;
import kerfwright.app.input.BadInput;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How others than this machine reach the pages; by none of these, they do not. */
public final class NetworkOptions {
  @Option(
      names = "--lan",
      description =
          "Answer on the practice's network, over TLS, to people who sign in. A certificate"
              + " authority of the practice is made at first start; /pair on the next port makes a"
              + " tablet trust it.")
  private boolean lan;

  @Option(
      names = "--behind-proxy",
      description =
          "Answer to a proxy on this machine that does the TLS; see docs/network.md for what it must"
              + " send.")
  private boolean behindProxy;

  @Option(
      names = "--name",
      paramLabel = "NAME",
      description =
          "With --lan or --behind-proxy: a name the pages are called by. May be repeated.")
  private List<String> names = List.of();

  @Option(
      names = "--certificate",
      paramLabel = "FILE",
      description = "With --lan: a certificate with its chain (PEM) instead of the own authority.")
  private @Nullable Path certificate;

  @Option(names = "--key", paramLabel = "FILE", description = "The key of that certificate (PEM).")
  private @Nullable Path key;

  @Option(
      names = "--authority",
      paramLabel = "DIR",
      description =
          "With --lan: folder that keeps the own authority (default: tls in the folder of --data).")
  private @Nullable Path authority;

  /** Only this machine, as without any option. */
  public static NetworkOptions none() {
    return new NetworkOptions();
  }

  /** On the network under names of a kind, as {@code --lan --name}. */
  public static NetworkOptions lan(Path authority, List<String> names) {
    NetworkOptions options = new NetworkOptions();
    options.lan = true;
    options.authority = authority;
    options.names = names;
    return options;
  }

  void check(boolean demo) throws BadInput {
    if (demo && (lan || behindProxy)) {
      throw new BadInput("--demo", "stays on this machine: it knows no sign-in");
    }
    if (lan && behindProxy) {
      throw new BadInput("--lan", "and --behind-proxy are both given; give one of them");
    }
    if (behindProxy && names.isEmpty()) {
      throw new BadInput("--behind-proxy", "needs --name, the name in the address of the pages");
    }
    if (!lan && (certificate != null || key != null || authority != null)
        || !lan && !behindProxy && !names.isEmpty()) {
      throw new BadInput("--lan", "is needed for a certificate, an authority or a name");
    }
    if ((certificate == null) != (key == null)) {
      throw new BadInput("--certificate", "and --key go together");
    }
    for (String name : names) {
      if (!name.matches("[A-Za-z0-9-]{1,63}(\\.[A-Za-z0-9-]{1,63}){0,6}")) {
        throw new BadInput("--name", "'" + name + "' is not the name of a host");
      }
    }
  }

  public boolean lan() {
    return lan;
  }

  public boolean behindProxy() {
    return behindProxy;
  }

  public List<String> names() {
    return names;
  }

  public @Nullable Path certificate() {
    return certificate;
  }

  public @Nullable Path key() {
    return key;
  }

  public @Nullable Path authority() {
    return authority;
  }
}
