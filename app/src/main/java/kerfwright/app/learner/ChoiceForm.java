package kerfwright.app.learner;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.planner.OwnChoice;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.tool.Instrument;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * What was chosen for every operation, as typed and as the planner takes it.
 *
 * @param typed the fields by name and step
 * @param choices the choices by step; a step left to the plan has none
 * @param faults keys of texts by step
 */
public record ChoiceForm(
    Map<String, String> typed, Map<Integer, OwnChoice> choices, Map<Integer, String> faults) {
  /** Water to choose from, mL/min. */
  public static final List<Integer> WATER = List.of(50, 25, 0);

  private static final double MOST_RPM = 1_000_000;

  /** Something was chosen and all of it can be read. */
  public boolean asked() {
    return !choices.isEmpty() && faults.isEmpty();
  }

  /** A field as typed, empty where it was not. */
  public String at(String field, int step) {
    return typed.getOrDefault(field + step, "");
  }

  static ChoiceForm of(LessonCases.Lesson lesson, Function<String, @Nullable String> sent) {
    Map<String, String> typed = new LinkedHashMap<>();
    Map<Integer, OwnChoice> choices = new HashMap<>();
    Map<Integer, String> faults = new HashMap<>();
    for (int step = 1; step <= lesson.happens().planned().size(); step++) {
      for (String field : List.of("instrument", "handpiece", "rpm", "stroke", "water")) {
        String value = sent.apply(field + step);
        if (value != null && !value.isBlank()) {
          typed.put(field + step, value.strip());
        }
      }
      if (typed.containsKey("instrument" + step)) {
        read(lesson, typed, step, choices, faults);
      }
    }
    return new ChoiceForm(typed, choices, faults);
  }

  private static void read(
      LessonCases.Lesson lesson,
      Map<String, String> typed,
      int step,
      Map<Integer, OwnChoice> choices,
      Map<Integer, String> faults) {
    Optional<DrawerInstrument> instrument =
        lesson.drawer().instruments().stream()
            .filter(one -> one.id().equals(typed.get("instrument" + step)))
            .findFirst();
    Optional<Handpiece> handpiece =
        lesson.cutCase().handpieces().stream()
            .filter(one -> one.id().equals(typed.get("handpiece" + step)))
            .findFirst();
    Optional<Stroke> stroke = Identified.of(Stroke.class, typed.get("stroke" + step));
    String water = typed.getOrDefault("water" + step, "50");
    String rpm = typed.getOrDefault("rpm" + step, "").replaceAll("[\\s\\u00A0.,']", "");
    if (instrument.isEmpty() || handpiece.isEmpty() || stroke.isEmpty()) {
      faults.put(step, "learner.fault-choice");
    } else if (!rpm.matches("\\d{0,7}") || !water.matches("\\d{1,3}")) {
      faults.put(step, "learner.fault-speed");
    } else {
      double speed =
          rpm.isEmpty() ? highest(instrument.get(), handpiece.get()) : Double.parseDouble(rpm);
      if (speed < 1 || speed > MOST_RPM) {
        faults.put(step, "learner.fault-speed");
        return;
      }
      choices.put(
          step,
          new OwnChoice(
              instrument.get().id(),
              handpiece.get().id(),
              speed,
              stroke.get(),
              Double.parseDouble(water)));
    }
  }

  /** As fast as both bear it; the handpiece's own speed where it must not turn the instrument. */
  private static double highest(DrawerInstrument drawer, Handpiece handpiece) {
    Instrument instrument = Instrument.of(drawer);
    double bears = instrument == null ? 0 : CandidateSearch.highestRpm(instrument, handpiece);
    return bears > 0 ? bears : handpiece.drive().freeSpeed().rpm();
  }

  /** The same fields as a mistake fills them in. */
  static Map<String, String> of(Mistake mistake, List<Candidate> planned) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (int i = 0; i < planned.size(); i++) {
      if (planned.get(i).work().operation().id().equals(mistake.operation())) {
        OwnChoice choice = mistake.choice();
        fields.put("instrument" + (i + 1), choice.instrument());
        fields.put("handpiece" + (i + 1), choice.handpiece());
        fields.put("rpm" + (i + 1), String.valueOf(Math.round(choice.setRpm())));
        fields.put("stroke" + (i + 1), choice.stroke().id());
        fields.put("water" + (i + 1), String.valueOf(Math.round(choice.waterMlPerMin())));
        return fields;
      }
    }
    throw new IllegalStateException("No step of the case does " + mistake.operation());
  }
}
