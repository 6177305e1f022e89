package kerfwright.app.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import kerfwright.app.input.Fault;

/** The faults of a form, each at the place beside its field. */
public final class FormFaults {
  private final Map<String, List<String>> byPlace = new LinkedHashMap<>();

  private FormFaults() {}

  static FormFaults of(CaseForm form, List<Fault> faults) {
    FormFaults all = new FormFaults();
    for (Fault fault : faults) {
      all.byPlace
          .computeIfAbsent(form.place(fault), place -> new ArrayList<>())
          .add(tail(fault) + fault.sentence());
    }
    return all;
  }

  /** The name of the part of a field a sentence is about; empty where it is the whole field. */
  private static String tail(Fault fault) {
    String field = fault.field();
    int dot = field.indexOf('.');
    if (dot < 0 || field.startsWith("tooth")) {
      return "";
    }
    return field.substring(dot + 1).replace("_mm", "").replace('_', ' ').replace(".", ", ") + " ";
  }

  public boolean none() {
    return byPlace.isEmpty();
  }

  public int count() {
    return byPlace.values().stream().mapToInt(List::size).sum();
  }

  /** What to show at a place; empty where all is well. */
  public String at(String place) {
    return String.join("; ", byPlace.getOrDefault(place, List.of()));
  }

  public boolean any(String place) {
    return byPlace.containsKey(place);
  }

  /** Places that hold a fault. */
  public List<String> places() {
    return List.copyOf(new TreeSet<>(byPlace.keySet()));
  }
}
