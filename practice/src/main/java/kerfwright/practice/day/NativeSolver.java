package kerfwright.practice.day;

import com.google.ortools.Loader;
import org.jspecify.annotations.Nullable;

/** Loads the solver's native library once, and knows why where it cannot. */
public final class NativeSolver {
  private NativeSolver() {}

  /** Loads on first touch, once. */
  private static final class Holder {
    static final @Nullable String FAULT = load();
  }

  /** Begins to load beside whatever the caller does next. */
  public static void warmUp() {
    Thread loader = new Thread(NativeSolver::available, "day-solver-load");
    loader.setDaemon(true);
    loader.start();
  }

  /** Whether the solver runs here; the first call takes about half a second. */
  public static boolean available() {
    return Holder.FAULT == null;
  }

  /** Why it does not run here, or null. */
  public static @Nullable String fault() {
    return Holder.FAULT;
  }

  private static @Nullable String load() {
    if (Boolean.getBoolean("kerfwright.day.pureJava")) {
      return "switched off by kerfwright.day.pureJava";
    }
    try {
      Loader.loadNativeLibraries();
      return null;
    } catch (RuntimeException | LinkageError e) {
      return "no native library for "
          + System.getProperty("os.name")
          + " "
          + System.getProperty("os.arch")
          + ": "
          + e.getMessage();
    }
  }
}
