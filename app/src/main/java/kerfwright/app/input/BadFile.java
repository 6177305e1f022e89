package kerfwright.app.input;

import java.io.IOException;
import kerfwright.quantity.Message;

/** A file or folder that cannot be used, though it can be read; says why. */
public final class BadFile extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Message problem;

  public BadFile(String key, Object... values) {
    super(key);
    this.problem = Message.of(key, values);
  }

  /** Why a file cannot be used; what the system says stays as it says it. */
  public static Message why(Exception failure) {
    return failure instanceof BadFile bad
        ? bad.problem
        : Message.of(
            "fault.system",
            failure.getClass().getSimpleName(),
            String.valueOf(failure.getMessage()));
  }
}
