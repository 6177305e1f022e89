package kerfwright.app.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * How the pages are served.
 *
 * @param demo with the invented practice
 * @param port port, 0 for any free one
 * @param data folder of the practice, or null
 * @param network who else may reach them
 */
public record ServeOptions(boolean demo, int port, @Nullable Path data, NetworkOptions network) {
  /** For this machine alone. */
  public ServeOptions(boolean demo, int port, @Nullable Path data) {
    this(demo, port, data, NetworkOptions.none());
  }
}
