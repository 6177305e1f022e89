package kerfwright.catalogue.instrument;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the working part is made of and how it removes material. Only a bladed one is a bur. */
public enum InstrumentKind {
  DIAMOND("diamond", "diamond instrument", false),
  SINTERED_DIAMOND("sintered-diamond", "sintered diamond instrument", false),
  CARBIDE("carbide", "carbide bur", true),
  STEEL("steel", "steel bur", true),
  CERAMIC("ceramic", "ceramic bur", true),
  POLYMER("polymer", "polymer bur", true),
  POLISHER("polisher", "polisher", false),
  DISC("disc", "polishing disc", false),
  STONE("stone", "mounted stone", false);

  private final String id;
  private final String label;
  private final boolean bladed;

  InstrumentKind(String id, String label, boolean bladed) {
    this.id = id;
    this.label = label;
    this.bladed = bladed;
  }

  /** The kind with this id, upper and lower case counting the same. */
  public static Optional<InstrumentKind> byId(String id) {
    String wanted = id.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(kind -> kind.id.equals(wanted)).findFirst();
  }

  /** Every id, for errors that name what is valid. */
  public static List<String> ids() {
    return Arrays.stream(values()).map(InstrumentKind::id).toList();
  }

  /** The id used in files and JSON. */
  public String id() {
    return id;
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
