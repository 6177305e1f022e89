package kerfwright.practice.day;

import com.google.ortools.Loader;
import org.jspecify.annotations.Nullable;

/** Loads the solver's native library once, and knows why where it cannot. */
public final class NativeSolver {
  private static final @Nullable String FAULT = load();

  private NativeSolver() {}

  /** Whether the solver runs here; the first call takes about half a second. */
  public static boolean available() {
    return FAULT == null;
  }

  /** Why it does not run here, or null. */
  public static @Nullable String fault() {
    return FAULT;
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
