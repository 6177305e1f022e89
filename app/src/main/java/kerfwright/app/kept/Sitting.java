package kerfwright.app.kept;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import kerfwright.app.form.Sent;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.practice.kept.KeptCase;
import kerfwright.schedule.Need;
import kerfwright.schedule.Substitute;
import org.jspecify.annotations.Nullable;

/**
 * The cases of one appointment, with one tray. Written {@code kept: ID ID} where a day keeps the
 * case of an appointment.
 */
public final class Sitting {
  private static final String START = "kept: ";

  private Sitting() {}

  /** How a day keeps these cases; empty for none. */
  public static String text(List<UUID> cases) {
    return cases.isEmpty()
        ? ""
        : START + cases.stream().map(UUID::toString).collect(Collectors.joining(" "));
  }

  /** The cases a day kept, empty where it kept the words of a case file instead. */
  public static List<UUID> ids(@Nullable String text) {
    List<UUID> all = new ArrayList<>();
    if (text != null && text.startsWith(START)) {
      for (String id : text.substring(START.length()).split(" ")) {
        Sent.id(id).ifPresent(all::add);
      }
    }
    return all;
  }

  /** The same cases as they stand now; one that is gone is left out. */
  public static List<KeptCase> of(KeptCases cases, @Nullable String text) {
    return ids(text).stream().flatMap(id -> cases.find(id).stream()).toList();
  }

  /**
   * One tray for several plans: each type once, the life all of them ask of it. A substitute must
   * serve in every plan that needs the type, at its dearest ratio.
   */
  public static List<Need> tray(List<List<Need>> plans) {
    Map<String, Need> all = new LinkedHashMap<>();
    for (List<Need> plan : plans) {
      for (Need need : plan) {
        all.merge(need.type(), need, Sitting::both);
      }
    }
    return List.copyOf(all.values());
  }

  private static Need both(Need one, Need other) {
    List<Substitute> either = new ArrayList<>();
    for (Substitute first : one.substitutes()) {
      for (Substitute second : other.substitutes()) {
        if (first.type().equals(second.type())) {
          either.add(new Substitute(first.type(), Math.max(first.costRatio(), second.costRatio())));
        }
      }
    }
    return new Need(one.type(), one.lifeAsked() + other.lifeAsked(), either);
  }
}
