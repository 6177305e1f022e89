package kerfwright.planner.alike;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.NominalSize;
import kerfwright.catalogue.instrument.NominalSizes;
import kerfwright.catalogue.number.IsoNumber;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Ordinary instruments near a wanted one: one grit class or blade count or nominal size away, and
 * the usual instruments of the other kinds. New, without a maker's speed limit: the label counts.
 */
final class CatalogueNeighbours {
  private static final Remark READ_THE_LABEL = Remark.of("read-the-label");

  private static final int[] BLADES = {4, 6, 8, 12, 16, 20, 30};
  private static final double SIZES_AWAY_MM = 0.41;

  private final InstrumentProperties wanted;
  private final Map<String, DrawerInstrument> found = new LinkedHashMap<>();

  private CatalogueNeighbours(InstrumentProperties wanted) {
    this.wanted = wanted;
  }

  static List<DrawerInstrument> of(InstrumentProperties wanted) {
    CatalogueNeighbours neighbours = new CatalogueNeighbours(wanted);
    neighbours.varied();
    neighbours.otherKinds();
    return new ArrayList<>(neighbours.found.values());
  }

  private void varied() {
    for (NominalSize size : NominalSizes.all()) {
      double apart = size.diameter().millimetres() - wanted.headDiameter().millimetres();
      if (Math.abs(apart) > SIZES_AWAY_MM) {
        continue;
      }
      Length diameter = Math.abs(apart) < 0.005 ? wanted.headDiameter() : size.diameter();
      if (wanted.kind().bladed()) {
        for (int blades : BLADES) {
          add(null, blades, diameter, null);
        }
      } else {
        for (GritClass grit : GritClass.values()) {
          add(grit, null, diameter, number(grit, size));
        }
      }
    }
  }

  private void add(
      @Nullable GritClass grit, @Nullable Integer blades, Length diameter, @Nullable String iso) {
    boolean same =
        diameter.equals(wanted.headDiameter())
            && grit == wanted.grit()
            && java.util.Objects.equals(blades, wanted.blades());
    if (same) {
      return;
    }
    String what = grit != null ? grit.label() : blades + " blades";
    put(
        String.format(java.util.Locale.ROOT, "%s, %.1f mm", what, diameter.millimetres()),
        like(wanted.kind(), iso, grit, blades, diameter));
  }

  /** The wanted number with another grit and size; null where the wanted one has no full number. */
  private @Nullable String number(GritClass grit, NominalSize size) {
    String iso = wanted.iso();
    if (iso == null || !wanted.kind().isDiamond()) {
      return null;
    }
    IsoNumber number = IsoNumber.parse(iso);
    String material = number.material();
    String shank = number.shank();
    return material == null || shank == null
        ? null
        : IsoNumber.of(material, shank, number.shape(), grit.isoCode(), size.code()).encode();
  }

  /** The same head of another kind, with an ordinary grit or number of blades. */
  private void otherKinds() {
    for (GritClass grit : GritClass.values()) {
      otherKind(InstrumentKind.DIAMOND, grit, null);
    }
    otherKind(InstrumentKind.SINTERED_DIAMOND, GritClass.COARSE, null);
    for (int blades : BLADES) {
      otherKind(InstrumentKind.CARBIDE, null, blades);
    }
    otherKind(InstrumentKind.POLYMER, null, 8);
  }

  private void otherKind(InstrumentKind kind, @Nullable GritClass grit, @Nullable Integer blades) {
    if (kind != wanted.kind()) {
      String what = grit != null ? grit.label() : blades + " blades";
      put(
          wanted.shank().label() + " " + kind.label() + ", " + what,
          like(kind, null, grit, blades, wanted.headDiameter()));
    }
  }

  /** The wanted instrument but for these. */
  private InstrumentProperties like(
      InstrumentKind kind,
      @Nullable String iso,
      @Nullable GritClass grit,
      @Nullable Integer blades,
      Length diameter) {
    return new InstrumentProperties(
        kind,
        iso,
        null,
        wanted.shape(),
        wanted.shapeName(),
        grit,
        blades,
        kind == wanted.kind() && wanted.crossCut(),
        diameter,
        wanted.headLength(),
        wanted.shank(),
        wanted.overallLength(),
        null,
        List.of(READ_THE_LABEL));
  }

  private void put(String id, InstrumentProperties properties) {
    found.putIfAbsent(id, Alike.asNew(id, properties));
  }
}
