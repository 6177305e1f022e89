package kerfwright.app.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * How the pages are served.
 *
 * @param demo with the invented practice
 * @param port port on loopback, 0 for any free one
 * @param data folder of the practice, or null
 */
public record ServeOptions(boolean demo, int port, @Nullable Path data) {}
