package kerfwright.catalogue.instrument;

import kerfwright.catalogue.Provenance;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * What digits 10 to 12 of the ISO 6360 number say: grit of a diamond instrument, toothing of a bur
 * or cutter, grade of a polisher.
 *
 * @param appliesTo kinds of instrument the row is about
 * @param code three digits, or the twelfth digit alone for root-canal instruments
 * @param meaning in words
 * @param grit grit class, where it is one
 * @param usualBlades usual number of blades, where one goes with the toothing
 * @param usualBladesBasis standing of that number
 * @param crossCut true where the blades carry cross cuts
 * @param provenance where the row comes from
 */
public record Characteristic(
    AppliesTo appliesTo,
    String code,
    String meaning,
    @Nullable GritClass grit,
    @Nullable Integer usualBlades,
    @Nullable Basis usualBladesBasis,
    boolean crossCut,
    Provenance provenance) {
  /** Kinds of instrument with a table of characteristics of their own. */
  public enum AppliesTo implements Identified {
    DIAMOND("diamond instruments"),
    BUR("steel and carbide burs"),
    CUTTER("laboratory cutters"),
    POLISHER("bonded polishers"),
    ROOT_CANAL("root-canal instruments");

    private final String label;

    AppliesTo(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }

    /** Whether an instrument of this kind may carry a characteristic of this table. */
    public boolean fits(InstrumentKind kind) {
      return switch (this) {
        case DIAMOND -> kind.isDiamond() || kind == InstrumentKind.DISC;
        case BUR -> kind.bladed();
        case CUTTER -> kind == InstrumentKind.CARBIDE;
        case POLISHER -> kind == InstrumentKind.POLISHER || kind == InstrumentKind.DISC;
        case ROOT_CANAL -> false;
      };
    }
  }
}
