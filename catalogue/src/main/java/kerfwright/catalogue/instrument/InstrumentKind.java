package kerfwright.catalogue.instrument;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.quantity.Identified;

/** What the working part is made of and how it removes material. Only a bladed one is a bur. */
public enum InstrumentKind implements Identified {
  DIAMOND("diamond instrument", false),
  SINTERED_DIAMOND("sintered diamond instrument", false),
  CARBIDE("carbide bur", true),
  STEEL("steel bur", true),
  CERAMIC("ceramic bur", true),
  POLYMER("polymer bur", true),
  POLISHER("polisher", false),
  DISC("polishing disc", false),
  STONE("mounted stone", false);

  private final String label;
  private final boolean bladed;

  InstrumentKind(String label, boolean bladed) {
    this.label = label;
    this.bladed = bladed;
  }

  /** The kind with this id, upper and lower case counting the same. */
  public static Optional<InstrumentKind> byId(String id) {
    String wanted = id.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(kind -> kind.id().equals(wanted)).findFirst();
  }

  /** Every id, for errors that name what is valid. */
  public static List<String> ids() {
    return Arrays.stream(values()).map(InstrumentKind::id).toList();
  }

  public String label() {
    return label;
  }

  /** True for burs: blades with flutes between them. */
  public boolean bladed() {
    return bladed;
  }

  /** True where diamond grains do the work. */
  public boolean isDiamond() {
    return this == DIAMOND || this == SINTERED_DIAMOND;
  }
}
