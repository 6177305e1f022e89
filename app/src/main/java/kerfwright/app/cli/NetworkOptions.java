package kerfwright.app.cli;

import java.nio.file.Path;
import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How others than this machine reach the pages; by none of these, they do not. */
public final class NetworkOptions {
  @Option(names = "--lan")
  private boolean lan;

  @Option(names = "--behind-proxy")
  private boolean behindProxy;

  @Option(names = "--name", paramLabel = "NAME")
  private List<String> names = List.of();

  @Option(names = "--certificate", paramLabel = "FILE")
  private @Nullable Path certificate;

  @Option(names = "--key", paramLabel = "FILE")
  private @Nullable Path key;

  @Option(names = "--authority", paramLabel = "DIR")
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
      throw new BadInput("--demo", Message.of("command.serve-demo-here"));
    }
    if (lan && behindProxy) {
      throw new BadInput("--lan", Message.of("command.both-given", "--behind-proxy"));
    }
    if (behindProxy && names.isEmpty()) {
      throw new BadInput("--behind-proxy", Message.of("command.serve-proxy-name"));
    }
    if (!lan && (certificate != null || key != null || authority != null)
        || !lan && !behindProxy && !names.isEmpty()) {
      throw new BadInput("--lan", Message.of("command.serve-lan-needed"));
    }
    if ((certificate == null) != (key == null)) {
      throw new BadInput("--certificate", Message.of("command.serve-with-key"));
    }
    for (String name : names) {
      if (!name.matches("[A-Za-z0-9-]{1,63}(\\.[A-Za-z0-9-]{1,63}){0,6}")) {
        throw new BadInput("--name", Message.of("command.serve-no-host", name));
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
