package kerfwright.planner;

import java.util.List;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;
import org.jspecify.annotations.Nullable;

/** Instruments for tests: 1.2 mm, taper with round end, friction grip, unless changed. */
record AnInstrument(
    String id,
    InstrumentKind kind,
    @Nullable GritClass grit,
    @Nullable Integer blades,
    double headMm,
    double headLengthMm,
    ShankType shank,
    double overallMm,
    @Nullable Double maximumRpm,
    int uses,
    DrawerInstrument.State state) {

  static DrawerInstrument carbide(int blades) {
    return any("B" + blades, InstrumentKind.CARBIDE, null, blades).build();
  }

  static DrawerInstrument diamond(GritClass grit) {
    return any("D" + grit.isoCode(), InstrumentKind.DIAMOND, grit, null).build();
  }

  static AnInstrument any(
      String id, InstrumentKind kind, @Nullable GritClass grit, @Nullable Integer blades) {
    return new AnInstrument(
        id,
        kind,
        grit,
        blades,
        1.2,
        4,
        ShankType.FG,
        19,
        450_000.0,
        0,
        DrawerInstrument.State.CLEAN);
  }

  AnInstrument size(double head, double headLength, double overall) {
    return new AnInstrument(
        id, kind, grit, blades, head, headLength, shank, overall, maximumRpm, uses, state);
  }

  AnInstrument maximum(@Nullable Double rpm) {
    return new AnInstrument(
        id, kind, grit, blades, headMm, headLengthMm, shank, overallMm, rpm, uses, state);
  }

  AnInstrument shank(ShankType other) {
    return new AnInstrument(
        id, kind, grit, blades, headMm, headLengthMm, other, overallMm, maximumRpm, uses, state);
  }

  AnInstrument worn(int howOften) {
    return new AnInstrument(
        id,
        kind,
        grit,
        blades,
        headMm,
        headLengthMm,
        shank,
        overallMm,
        maximumRpm,
        howOften,
        state);
  }

  AnInstrument state(DrawerInstrument.State other) {
    return new AnInstrument(
        id, kind, grit, blades, headMm, headLengthMm, shank, overallMm, maximumRpm, uses, other);
  }

  DrawerInstrument build() {
    return new DrawerInstrument(
        id,
        new InstrumentProperties(
            kind,
            null,
            null,
            ShapeFamily.TAPER_ROUND_END,
            "taper, round end",
            grit,
            blades,
            false,
            Length.ofMillimetres(headMm),
            Length.ofMillimetres(headLengthMm),
            shank,
            Length.ofMillimetres(overallMm),
            maximumRpm == null ? null : RotationalSpeed.ofRpm(maximumRpm),
            List.of()),
        uses,
        0,
        state);
  }
}
