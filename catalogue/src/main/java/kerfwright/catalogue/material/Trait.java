package kerfwright.catalogue.material;

import java.util.Locale;

/** Traits the program itself asks for; {@code traits.csv} tells what each means. */
public enum Trait {
  TOOTH,
  ENAMEL,
  DENTINE,
  CEMENTUM,
  CARIOUS,
  CROWN,
  CERAMIC,
  PORCELAIN,
  LEUCITE,
  ZIRCONIA,
  ALLOY,
  METAL,
  RESIN,
  MERCURY,
  ADHESIVE,
  FILM,
  POST,
  CANAL_FILLING;

  /** As the tables write it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
