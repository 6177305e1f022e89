package kerfwright.app.today;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.setting.CaseSetting;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.SteriliserSetting;
import kerfwright.quantity.Identified;

/**
 * The questions of a first start, five at most; the program is of use after each of them. A
 * question is answered once its setting is there, or put aside.
 */
public final class FirstStart {
  /** Settings under which the questions not to be asked again stand, separated by spaces. */
  public static final String PUT_ASIDE = "start.put-aside";

  /** One question; the order is the order of asking. */
  public enum Question implements Identified {
    LANGUAGE,
    HANDPIECES,
    INSTRUMENTS,
    PEOPLE,
    STERILISERS;

    public int number() {
      return ordinal() + 1;
    }
  }

  private FirstStart() {}

  /** The next question nobody has answered or put aside. */
  public static Optional<Question> next(SettingValues set, Drawer drawer) {
    List<Question> open = new ArrayList<>(List.of(Question.values()));
    List<String> aside = List.of(set.text(PUT_ASIDE, "").split(" "));
    open.removeIf(one -> aside.contains(one.id()) || answered(one, set, drawer));
    return open.stream().findFirst();
  }

  private static boolean answered(Question question, SettingValues set, Drawer drawer) {
    return switch (question) {
      case LANGUAGE -> set.find("language").isPresent();
      case HANDPIECES -> set.find(CaseSetting.HANDPIECES).isPresent();
      case INSTRUMENTS -> !drawer.pieces().isEmpty();
      case PEOPLE -> !Person.all(set).isEmpty();
      case STERILISERS -> set.find(SteriliserSetting.COUNT.name()).isPresent();
    };
  }
}
