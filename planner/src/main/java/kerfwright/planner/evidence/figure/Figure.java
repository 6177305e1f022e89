package kerfwright.planner.evidence.figure;

import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.physics.heat.column.LayeredColumn;

/** One kind of figure that the models compute for a published test. */
public sealed interface Figure
    permits BrittleShareFigure,
        ChipFigure,
        ForceFigure,
        MouthHeatFigure,
        PowerSpeedFigure,
        PulpRiseFigure,
        RemovalFigure,
        RootRiseFigure,
        RoughnessFigure,
        SpecificEnergyFigure,
        SpeedFigure,
        SterilisationFigure,
        SurfaceRiseFigure,
        UseLossFigure {
  /** The figure in a unit of the data files. */
  double of(Trial trial, String unit);

  /** Whether a heat history is computed for it, which takes a hundred times longer. */
  default boolean slow() {
    return this instanceof PulpRiseFigure
        || this instanceof SurfaceRiseFigure
        || this instanceof MouthHeatFigure
        || this instanceof RootRiseFigure;
  }

  static Figure of(EvidenceCase.Figure kind) {
    return switch (kind) {
      case REMOVAL -> new RemovalFigure();
      case SPEED_UNDER_LOAD -> new SpeedFigure();
      case POWER_SPEED -> new PowerSpeedFigure();
      case TANGENTIAL_FORCE -> new ForceFigure();
      case SPECIFIC_ENERGY -> new SpecificEnergyFigure();
      case CHIP_THICKNESS -> new ChipFigure();
      case BRITTLE_SHARE -> new BrittleShareFigure();
      case USE_LOSS -> new UseLossFigure();
      case STERILISATION_LOSS -> new SterilisationFigure();
      case ROUGHNESS -> new RoughnessFigure();
      case PULP_RISE -> new PulpRiseFigure(new LayeredColumn());
      case SURFACE_RISE -> new SurfaceRiseFigure(new LayeredColumn());
      case ROOT_RISE -> new RootRiseFigure();
      case MOUTH_HEAT -> new MouthHeatFigure(new LayeredColumn());
    };
  }
}
