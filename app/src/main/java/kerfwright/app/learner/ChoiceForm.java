package kerfwright.app.learner;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.planner.OwnChoice;
import kerfwright.planner.WhatHappens;
import kerfwright.planner.casework.DrawerInstrument;
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

  static ChoiceForm of(WhatHappens lesson, Function<String, @Nullable String> sent) {
    ChoiceForm form = new ChoiceForm(new HashMap<>(), new HashMap<>(), new HashMap<>());
    for (int step = 1; step <= lesson.planned().size(); step++) {
      for (String field : List.of("instrument", "handpiece", "rpm", "stroke", "water")) {
        String value = sent.apply(field + step);
        if (value != null && !value.isBlank()) {
          form.typed.put(field + step, value.strip());
        }
      }
      if (form.typed.containsKey("instrument" + step)) {
        form.read(lesson, step);
      }
    }
    return form;
  }

  private void read(WhatHappens lesson, int step) {
    Optional<DrawerInstrument> instrument =
        lesson.instruments().stream()
            .filter(one -> one.id().equals(at("instrument", step)))
            .findFirst();
    Optional<Handpiece> handpiece =
        lesson.cutCase().handpieces().stream()
            .filter(one -> one.id().equals(at("handpiece", step)))
            .findFirst();
    Optional<Stroke> stroke = Identified.of(Stroke.class, at("stroke", step));
    String water = typed.getOrDefault("water" + step, "50");
    String rpm = at("rpm", step).replaceAll("[\\s\\u00A0.,']", "");
    if (instrument.isEmpty() || handpiece.isEmpty() || stroke.isEmpty()) {
      faults.put(step, "learner.fault-choice");
      return;
    }
    boolean figures = rpm.matches("\\d{0,7}") && water.matches("\\d{1,3}");
    double speed =
        !figures
            ? 0
            : rpm.isEmpty() ? highest(instrument.get(), handpiece.get()) : Double.parseDouble(rpm);
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

  /** As fast as both bear it; the handpiece's own speed where it must not turn the instrument. */
  private static double highest(DrawerInstrument drawer, Handpiece handpiece) {
    Instrument instrument = Instrument.of(drawer);
    double bears = instrument == null ? 0 : CandidateSearch.highestRpm(instrument, handpiece);
    return bears > 0 ? bears : handpiece.drive().freeSpeed().rpm();
  }
}
