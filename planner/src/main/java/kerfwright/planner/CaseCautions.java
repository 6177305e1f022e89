package kerfwright.planner;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.caution.CautionCondition;
import kerfwright.catalogue.caution.Cautions;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Trait;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.quantity.Finding;

/** The standing cautions that go with a case; nothing switches them off. */
final class CaseCautions {
  private static final double HIGH_SPEED_RPM = 100_000;

  private CaseCautions() {}

  static List<Finding> of(CutCase c, List<PlannedStep> steps) {
    Set<CautionCondition> when =
        EnumSet.of(CautionCondition.ALWAYS, CautionCondition.MODEL_OUTPUT, CautionCondition.NOISE);
    if (c.pulp().protectsPulp()) {
      when.add(CautionCondition.VITAL_TOOTH);
    }
    if (c.handpieces().stream().anyMatch(h -> h.drive().freeSpeed().rpm() >= HIGH_SPEED_RPM)) {
      when.add(CautionCondition.HIGH_SPEED);
    }
    Set<String> cut = new java.util.HashSet<>();
    steps.forEach(s -> s.operation().layers().forEach(l -> cut.add(l.materialId())));
    c.layers().stream()
        .map(l -> l.material())
        .filter(m -> steps.isEmpty() || cut.contains(m.id()))
        .forEach(m -> add(when, m));
    if (Procedure.POST_EXPOSURE.equals(c.procedure())
        || Procedure.POST_REMOVAL.equals(c.procedure())) {
      when.add(CautionCondition.POST);
    }
    if (Procedure.CROWN_PREPARATION.equals(c.procedure())
        || Procedure.VENEER_PREPARATION.equals(c.procedure())
        || Procedure.CROWN_SECTIONING.equals(c.procedure())
        || Procedure.CAVITY_PREPARATION.equals(c.procedure())
        || Procedure.INLAY_CAVITY.equals(c.procedure())
        || Procedure.ONLAY_CAVITY.equals(c.procedure())) {
      when.add(CautionCondition.ADJACENT_TOOTH);
    }
    return Cautions.packaged().findings(when);
  }

  private static void add(Set<CautionCondition> when, Material m) {
    switch (m.group()) {
      case TOOTH -> when.add(CautionCondition.CUTTING_TOOTH);
      case METAL -> when.add(CautionCondition.CUTTING_METAL);
      case CERAMIC -> when.add(CautionCondition.CUTTING_CERAMIC);
      case POLYMER, CEMENT -> when.add(CautionCondition.CUTTING_COMPOSITE);
      case BONE -> when.add(CautionCondition.BONE);
    }
    if (m.has(Trait.ZIRCONIA)) {
      when.add(CautionCondition.CUTTING_ZIRCONIA);
    }
    if (m.has(Trait.MERCURY)) {
      when.add(CautionCondition.AMALGAM);
    }
  }
}
