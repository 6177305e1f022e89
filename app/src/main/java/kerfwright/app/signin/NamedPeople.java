package kerfwright.app.signin;

import java.util.Map;
import kerfwright.practice.people.Account;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/** Whoever may put something down stands among the people of the practice. */
final class NamedPeople {
  private static final int TRIES = 5;

  private NamedPeople() {}

  /** What somebody does stays as the practice set it; where it set nothing, it is as usual. */
  static void name(Settings settings, Account account) {
    for (int i = 0; i < TRIES; i++) {
      SettingValues set = settings.read();
      if (Person.find(set, account.initials()).isPresent() || account.role().usual().isEmpty()) {
        return;
      }
      String does = account.role().usual().get().id();
      if (settings.write(set.version(), Map.of(Person.PREFIX + account.initials(), does))) {
        return;
      }
    }
  }
}
