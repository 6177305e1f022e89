package kerfwright.catalogue.stack;

import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Message;

/** What the stack tables ask of a tooth: its class, its arch, and whether it is a primary one. */
record ToothPlace(String toothClass, String arch, boolean primary, boolean firstMolar) {
  static ToothPlace of(Tooth tooth) {
    return new ToothPlace(
        tooth.toothClass().id(),
        tooth.upper() ? "maxillary" : "mandibular",
        tooth.primary(),
        !tooth.primary() && tooth.position() == 6);
  }

  boolean front() {
    return toothClass.equals("incisor") || toothClass.equals("canine");
  }

  String label() {
    return (primary ? "primary " : "") + arch + " " + toothClass;
  }

  Message message() {
    return Message.of("place." + label().replace(' ', '-'));
  }
}
