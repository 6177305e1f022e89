package kerfwright.schedule.search;

import com.google.ortools.Loader;
import org.jspecify.annotations.Nullable;

/** Loads the solver's native library once, and knows why where it cannot. */
final class NativeSolver {
  private NativeSolver() {}

  /** Loads on first touch, once. */
  private static final class Holder {
    static final @Nullable String FAULT = load();
  }

  /** Begins to load beside whatever the caller does next. */
  static void warmUp() {
    Thread loader = new Thread(NativeSolver::available, "day-solver-load");
    loader.setDaemon(true);
    loader.start();
  }

  /** Whether the solver runs here; the first call takes about half a second. */
  static boolean available() {
    return Holder.FAULT == null;
  }

  /** Why it does not run here, or null. */
  static @Nullable String fault() {
    return Holder.FAULT;
  }

  private static @Nullable String load() {
    try {
      Loader.loadNativeLibraries();
      return null;
    } catch (RuntimeException | LinkageError e) {
      String system = System.getProperty("os.name") + " " + System.getProperty("os.arch");
      return "no native library for " + system + ": " + e.getMessage();
    }
  }
}
