package kerfwright.planner.alike;

import java.util.List;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;

/** The materials a kind of instrument is usually used in: common practice, no source. */
public final class UsualWork {
  private UsualWork() {}

  /** The materials two instruments of a kind are compared in. */
  public static List<Material> of(InstrumentKind kind) {
    List<String> ids =
        switch (kind) {
          case DIAMOND, SINTERED_DIAMOND ->
              List.of("enamel", "dentine", "feldspathic-porcelain", "zirconia-3y");
          case CARBIDE -> List.of("dentine", "enamel", "amalgam", "co-cr-alloy");
          case STEEL -> List.of("dentine", "carious-dentine", "amalgam");
          case CERAMIC -> List.of("carious-dentine", "dentine");
          case POLYMER -> List.of("carious-dentine");
          case POLISHER, DISC -> List.of("composite", "lithium-disilicate", "enamel");
          case STONE -> List.of("composite", "enamel", "feldspathic-porcelain");
        };
    return ids.stream().map(Materials.packaged()::get).toList();
  }
}
