package kerfwright.practice.teaching;

import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a learner is called here: short and without a space, so that no full name fits. */
public final class Alias {
  private static final Pattern SHORT = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}-]{1,11}");

  private Alias() {}

  /** The alias as typed, where it is one: 2 to 12 letters, digits and hyphens. */
  public static Optional<String> of(@Nullable String typed) {
    String text = typed == null ? "" : typed.strip();
    return SHORT.matcher(text).matches() ? Optional.of(text) : Optional.empty();
  }
}
