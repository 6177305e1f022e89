package kerfwright.catalogue.stack;

import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Message;

/** What the stack tables ask of a tooth: its class, its arch, and whether it is a primary one. */
record ToothPlace(String toothClass, String arch, boolean primary, boolean firstMolar) {
  static ToothPlace of(Tooth tooth) {
    int quadrant = tooth.fdi() / 10;
    int position = tooth.fdi() % 10;
    boolean primary = quadrant >= 5;
    boolean upper = quadrant == 1 || quadrant == 2 || quadrant == 5 || quadrant == 6;
    String toothClass =
        position <= 2
            ? "incisor"
            : position == 3 ? "canine" : position <= 5 && !primary ? "premolar" : "molar";
    return new ToothPlace(
        toothClass, upper ? "maxillary" : "mandibular", primary, !primary && position == 6);
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
