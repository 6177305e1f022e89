package kerfwright.catalogue.tooth;

import kerfwright.quantity.Identified;

/** Classes of teeth. */
public enum ToothClass implements Identified {
  INCISOR,
  CANINE,
  PREMOLAR,
  MOLAR
}
