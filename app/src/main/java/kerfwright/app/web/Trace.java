package kerfwright.app.web;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Where a fault arose, for the log: kinds and places alone, because messages quote values. */
final class Trace {
  private static final int FRAMES = 15;

  private Trace() {}

  static String of(Throwable fault) {
    StringBuilder text = new StringBuilder();
    Set<Throwable> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    for (@Nullable Throwable one = fault; one != null && seen.add(one); one = one.getCause()) {
      text.append('\n').append(one.getClass().getName());
      StackTraceElement[] frames = one.getStackTrace();
      for (int i = 0; i < Math.min(FRAMES, frames.length); i++) {
        text.append("\n  at ").append(frames[i]);
      }
    }
    return text.toString();
  }
}
