package kerfwright.catalogue.material;

import kerfwright.quantity.Identified;

/** Traits the program itself asks for; {@code traits.csv} tells what each means. */
public enum Trait implements Identified {
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
}
