package kerfwright.app.security;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.util.List;
import java.util.Optional;

/** Which passwords and digits are taken. Any letters; no rule on what kinds of them. */
public final class PasswordRule {
  public static final int FEWEST = 12;
  public static final int MOST = 128;

  private static final int EASILY_GUESSED = 2;

  private PasswordRule() {}

  /** The key of what is wrong with it; empty where nothing is. */
  public static Optional<String> fault(String password, String initials) {
    if (password.length() < FEWEST || password.length() > MOST) {
      return Optional.of("signin.password-length");
    }
    List<String> known = List.of("kerfwright", "practice", "praxis", initials);
    int score = new Zxcvbn().measure(password, known).getScore();
    return score <= EASILY_GUESSED ? Optional.of("signin.password-guessed") : Optional.empty();
  }

  /** Four to six digits that are neither one digit nor a run of them. */
  public static boolean arePin(String digits) {
    return digits.matches("\\d{4,6}")
        && !digits.matches("(\\d)\\1+")
        && !"01234567890".contains(digits)
        && !"9876543210".contains(digits);
  }
}
