package kerfwright.app.web.caseform;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.input.Fault;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.Contradiction.Fix;

/** The faults of a form, each at the place beside its field. */
public final class FormFaults {
  private static final String FIELD = "case.field-";

  private final Map<String, List<String>> byPlace = new LinkedHashMap<>();
  private final List<Offered> fixes = new ArrayList<>();

  /**
   * A fix as a button.
   *
   * @param button what the button sends
   * @param sentence what is wrong
   * @param words what it does
   */
  public record Offered(String button, String sentence, String words) {}

  private FormFaults() {}

  public static FormFaults nothing() {
    return new FormFaults();
  }

  public static FormFaults of(Say say, CaseForm form, List<Fault> faults) {
    FormFaults all = new FormFaults();
    for (Fault fault : faults) {
      all.byPlace
          .computeIfAbsent(form.place(fault), place -> new ArrayList<>())
          .add(part(say, fault) + sentence(say, fault));
      Fix fix = fault.fix();
      if (fix != null) {
        all.fixes.add(new Offered(FormFix.button(fix), fault.sentence(say), words(say, fix)));
      }
    }
    return all;
  }

  /** What a form offers itself need not be listed beside it. */
  private static String sentence(Say say, Fault fault) {
    boolean number = fault.message().keys().anyMatch(key -> key.startsWith("fault.number"));
    boolean usual = fault.message().key().startsWith("fault.missing-usual");
    return fault.missing() && !number && !usual ? say.at("fault.fill-in") : fault.sentence(say);
  }

  /** The name of the part of a field a sentence is about; empty where it is the whole field. */
  private static String part(Say say, Fault fault) {
    String field = fault.field();
    int dot = field.indexOf('.');
    if (dot < 0 || field.startsWith("tooth")) {
      return "";
    }
    String part = field.substring(dot + 1).replace("_mm", "").replace('_', '-').replace('.', '-');
    String key = "fault.part-" + part;
    return (say.has(key) ? say.at(key) : part) + " ";
  }

  /** What the button of a fix says. */
  private static String words(Say say, Fix fix) {
    String field = fix.field().startsWith("layers[") ? "known" : fix.field();
    String name = say.at(FIELD + field);
    String value = fix.value();
    if (value == null) {
      return say.at("case.fix-usual", name);
    }
    String key =
        switch (field) {
          case "procedure", "pulp", "restoration", "intended" -> "label." + field + "-" + value;
          default -> "case.known-" + value;
        };
    return say.at("case.fix-set", name, say.at(key));
  }

  /** What can be put right with one press. */
  public List<Offered> fixes() {
    return List.copyOf(fixes);
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

  /** Places to jump to from the head of the form: those nothing is offered for there. */
  public List<String> jumps() {
    return byPlace.keySet().stream()
        .filter(place -> !place.equals("form"))
        .filter(place -> fixes.stream().noneMatch(fix -> at(place).contains(fix.sentence())))
        .toList();
  }

  /** What is told at a place, with the name of its field before it. */
  public String named(Say say, String place) {
    String key = FIELD + place;
    String layer = "layer-";
    if (say.has(key)) {
      return say.at(key) + ": " + at(place);
    }
    return place.startsWith(layer)
        ? say.at("case.layer", Integer.parseInt(place.substring(layer.length())) + 1)
            + ": "
            + at(place)
        : at(place);
  }
}
