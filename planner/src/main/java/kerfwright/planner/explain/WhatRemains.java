package kerfwright.planner.explain;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.StepOperation.Remaining;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** What stays under a cut, layer by layer, with how far each may be thinner or thicker. */
final class WhatRemains {
  private static final double LEAST_MM = 0.005;

  private WhatRemains() {}

  /** The layer the cut ends in and the tooth below it; empty where nothing stays. */
  static List<Remaining> under(CutCase c, Candidate candidate) {
    double floor = candidate.work().toM() * 1e3;
    double top = 0;
    List<Remaining> remaining = new ArrayList<>();
    for (Layer layer : c.layers()) {
      double bottom = top + layer.thickness().typical().millimetres();
      double left = bottom - Math.max(top, floor);
      boolean cutInto = floor > top - LEAST_MM;
      if (left > LEAST_MM && (cutInto || isTooth(layer))) {
        remaining.add(
            new Remaining(
                layer.material().id(),
                spread(layer, left),
                candidate.work().heat() == HeatTarget.ROOT_SURFACE
                    ? null
                    : LeastLeft.mm(c, layer, candidate.work().operation().variant())));
      }
      top = bottom;
    }
    return remaining;
  }

  /** Dentine left over the pulp, sound or not; null where none is told. */
  static @Nullable Estimate overThePulp(CutCase c, Candidate candidate) {
    double floor = candidate.work().toM() * 1e3;
    double top = 0;
    Estimate left = null;
    for (Layer layer : c.layers()) {
      double bottom = top + layer.thickness().typical().millimetres();
      if (layer.material().has(Trait.DENTINE) || layer.material().has(Trait.CARIOUS)) {
        Estimate of = spread(layer, Math.max(0, bottom - Math.max(top, floor)));
        left = left == null ? of : left.plus(of);
      }
      top = bottom;
    }
    return left;
  }

  private static boolean isTooth(Layer layer) {
    return layer.material().has(Trait.TOOTH) || layer.material().has(Trait.CARIOUS);
  }

  private static Estimate spread(Layer layer, double leftMm) {
    Range<Length> t = layer.thickness();
    double thinner = t.typical().millimetres() - t.low().millimetres();
    double thicker = t.high().millimetres() - t.typical().millimetres();
    return new Estimate(Math.max(0, leftMm - thinner), leftMm, leftMm + thicker);
  }
}
