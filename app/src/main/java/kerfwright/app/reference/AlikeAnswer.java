package kerfwright.app.reference;

import java.util.List;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.handpiece.HandpieceEntry;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.alike.Alike;
import kerfwright.planner.alike.Neighbour;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * The instruments most like a wanted one.
 *
 * @param wanted the wanted one
 * @param alike how it was compared
 * @param drawer the nearest in the drawer
 * @param catalogue the nearest in the catalogue
 */
public record AlikeAnswer(
    InstrumentProperties wanted, Alike alike, List<Neighbour> drawer, List<Neighbour> catalogue) {
  /** How many neighbours are told. */
  public static final int TOLD = 6;

  public AlikeAnswer {
    drawer = List.copyOf(drawer);
    catalogue = List.copyOf(catalogue);
  }

  /** The answer, or null where grit or blades of the wanted one are not known. */
  public static @Nullable AlikeAnswer of(InstrumentProperties wanted, DrawerSnapshot drawer) {
    Alike alike = Alike.to(wanted);
    if (alike == null) {
      return null;
    }
    return new AlikeAnswer(
        wanted,
        alike,
        alike.among(drawer.instruments()).stream().limit(TOLD).toList(),
        alike.inCatalogue().stream().limit(TOLD).toList());
  }

  /** What to add where an instrument cannot be compared. */
  public static Message unknown(InstrumentProperties wanted) {
    return Message.of(wanted.kind().bladed() ? "reference.add-blades" : "reference.add-grit");
  }

  /** Where the load of the comparison comes from. */
  public static List<SourceKey> loadSources() {
    return Evidence.packaged().get("DC057").sources();
  }

  private Handpiece handpiece() {
    return Handpieces.entries().stream()
        .map(HandpieceEntry::handpiece)
        .filter(one -> one.label().equals(alike.handpiece()))
        .findFirst()
        .orElseThrow();
  }

  /** One line on how the comparison was made. */
  public String how(Say say) {
    return say.at(
        "reference.alike-how",
        Written.number(say, alike.loadN()),
        Labels.handpiece(say, handpiece()),
        String.join(
            ", ",
            alike.materials().stream().map(m -> Labels.materialWithin(say, m.id())).toList()));
  }
}
