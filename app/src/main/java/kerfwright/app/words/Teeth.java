package kerfwright.app.words;

import kerfwright.catalogue.tooth.Tooth;

/** Names of teeth in words. */
public final class Teeth {
  private Teeth() {}

  /** As "permanent upper right first molar". */
  public static String name(Say say, Tooth tooth) {
    return say.at(
        "tooth.name",
        say.at(tooth.primary() ? "tooth.primary" : "tooth.permanent"),
        say.at("tooth.corner-" + (tooth.upper() ? "upper" : "lower") + side(tooth)),
        which(say, tooth));
  }

  private static String side(Tooth tooth) {
    return tooth.right() ? "-right" : "-left";
  }

  private static String which(Say say, Tooth tooth) {
    int i = tooth.position();
    return switch (tooth.toothClass()) {
      case INCISOR -> say.at(i == 1 ? "tooth.central-incisor" : "tooth.lateral-incisor");
      case CANINE -> say.at("tooth.canine");
      case PREMOLAR -> say.at(i == 4 ? "tooth.first-premolar" : "tooth.second-premolar");
      case MOLAR -> say.at("tooth.molar-" + (i - (tooth.primary() ? 3 : 5)));
    };
  }
}
