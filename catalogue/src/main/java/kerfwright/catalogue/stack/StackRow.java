package kerfwright.catalogue.stack;

/** A row of the stack table: for which restoration, place and teeth the layer holds, and where. */
record StackRow(
    String restoration, String place, String tooth, String arch, int order, UsualLayer layer) {

  boolean fits(String wantedRestoration, String wantedPlace, ToothPlace at) {
    return restoration.equals(wantedRestoration)
        && place.equals(wantedPlace)
        && (tooth.equals("any") || tooth.equals(at.toothClass()))
        && (arch.equals("any") || arch.equals(at.arch()));
  }

  /** The more a row says of the tooth, the more it weighs. */
  int weight() {
    return (tooth.equals("any") ? 0 : 2) + (arch.equals("any") ? 0 : 1);
  }
}
