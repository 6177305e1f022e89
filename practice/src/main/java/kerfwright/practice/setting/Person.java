package kerfwright.practice.setting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.quantity.Identified;

/**
 * Somebody of the practice, by initials alone.
 *
 * @param initials one to four letters or digits, such as AB
 * @param role what they do
 */
public record Person(String initials, StaffRole role) {
  /** Settings that name a person begin with this; the initials follow, the role is the value. */
  public static final String PREFIX = "person.";

  public Person {
    if (!initialsAreSound(initials)) {
      throw new IllegalArgumentException("Not initials: '" + initials + "'");
    }
  }

  public static boolean initialsAreSound(String initials) {
    return initials.matches("[\\p{Lu}\\p{N}]{1,4}");
  }

  /** Everybody the settings name, by initials. */
  public static List<Person> all(SettingValues settings) {
    List<Person> people = new ArrayList<>();
    for (Map.Entry<String, String> one : settings.values().entrySet()) {
      if (one.getKey().startsWith(PREFIX)) {
        Identified.of(StaffRole.class, one.getValue())
            .ifPresent(
                role -> people.add(new Person(one.getKey().substring(PREFIX.length()), role)));
      }
    }
    people.sort(Comparator.comparing(Person::initials));
    return people;
  }

  public static Optional<Person> find(SettingValues settings, String initials) {
    return all(settings).stream().filter(one -> one.initials().equals(initials)).findFirst();
  }
}
