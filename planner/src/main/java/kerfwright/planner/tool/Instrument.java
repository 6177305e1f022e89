package kerfwright.planner.tool;

import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.material.ToolMaterial;
import kerfwright.catalogue.material.ToolMaterials;
import kerfwright.physics.cutting.AbrasiveTool;
import kerfwright.physics.cutting.BladedTool;
import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.casework.DrawerInstrument;
import org.jspecify.annotations.Nullable;

/**
 * An instrument of the drawer with its working part and shaft worked out once.
 *
 * <p>Tool figures: hardness of diamond 80 GPa, carbide 15, steel 6, ceramic 12, polymer 0.45, stone
 * 20 GPa (handbooks, from memory); edge radius 3 micrometres, run-out 5 (measured handpiece
 * eccentricities 3.5 to 7.8: Appl Sci 2019;9:3395); cross cuts leave 0.6 of the edge (project
 * setting).
 *
 * @param drawer the physical instrument
 * @param part its working part
 * @param shaft its shaft
 */
public record Instrument(DrawerInstrument drawer, WorkingPart part, Shaft shaft) {
  private static final ToolMaterials TOOLS = ToolMaterials.packaged();

  /** Project setting without a source. */
  static final double USES_IN_A_LIFE = 5;

  private static final double EDGE_RADIUS_M = 3e-6;
  private static final double RUN_OUT_M = 5e-6;
  private static final double CROSS_CUT_EDGE = 0.6;
  private static final double ELASTIC_BOND = 0.15;

  /** Works out an instrument, or null where its working part is not known well enough. */
  public static @Nullable Instrument of(DrawerInstrument drawer) {
    InstrumentProperties p = drawer.properties();
    Shaft shaft = Shaft.of(p);
    double lives = drawer.uses() / USES_IN_A_LIFE * Sharpness.LIFE_END;
    if (p.kind().bladed()) {
      Integer blades = p.blades();
      if (blades == null) {
        return null;
      }
      BladedTool tool =
          new BladedTool(
              blades,
              EDGE_RADIUS_M,
              p.crossCut() ? CROSS_CUT_EDGE : 1,
              hardnessPa(p.kind()),
              RUN_OUT_M,
              shaft.model().tipStiffnessNPerM());
      return new Instrument(drawer, BladedPart.used(tool, lives, steam(drawer)), shaft);
    }
    GritClass grit = p.grit();
    if (grit == null) {
      return null;
    }
    boolean elastic = p.kind() == InstrumentKind.POLISHER || p.kind() == InstrumentKind.DISC;
    AbrasiveTool tool =
        new AbrasiveTool(
            grit.particleSize().typical().metres(),
            p.kind() == InstrumentKind.SINTERED_DIAMOND ? 0.3 : 0.4,
            hardnessPa(p.kind()),
            elastic ? ELASTIC_BOND : 1,
            RUN_OUT_M);
    double reserve = p.kind() == InstrumentKind.DIAMOND ? 1 : 6;
    return new Instrument(drawer, AbrasivePart.used(tool, reserve, lives, steam(drawer)), shaft);
  }

  private static double steam(DrawerInstrument drawer) {
    return drawer.properties().kind().bladed()
        ? Sharpness.ofCarbideAfterCycles(drawer.sterilisations())
        : Sharpness.ofDiamondAfterCycles(drawer.sterilisations());
  }

  private static double hardnessPa(InstrumentKind kind) {
    return material(kind).hardness().typical().pascals();
  }

  /** What the cutting part of a kind is made of. */
  public static ToolMaterial material(InstrumentKind kind) {
    return switch (kind) {
      case DIAMOND, SINTERED_DIAMOND, POLISHER -> TOOLS.diamond();
      case CARBIDE -> TOOLS.cementedCarbide();
      case STEEL -> TOOLS.toolSteel();
      case CERAMIC -> TOOLS.ceramic();
      case POLYMER -> TOOLS.polymer();
      case STONE, DISC -> TOOLS.get("alumina");
    };
  }

  public InstrumentProperties properties() {
    return drawer.properties();
  }

  /** How deep the instrument can work in an opening of a given width, m. */
  public double reachM(double openingWidthM) {
    double shank = properties().shank().diameter().metres();
    return shank < openingWidthM
        ? properties().overhang().metres()
        : properties().headLength().metres() + shaft.neckLengthM();
  }

  /** True where uses and what steam took come to more than a life. */
  public boolean wornOut() {
    return part.livesUsed() - Math.log(steam(drawer)) > Sharpness.LIFE_END + 1e-9;
  }
}
