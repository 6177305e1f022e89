package kerfwright.catalogue.number;

import static java.util.Objects.requireNonNull;

import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.Characteristic;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.Grits;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.quantity.Basis;
import org.jspecify.annotations.Nullable;

/** Grit of an abrasive instrument, blades and cross cuts of a bur. */
final class GritAndBlades extends RowPart {
  GritAndBlades(RowPart row) {
    super(row);
  }

  @Nullable GritClass grit(@Nullable InstrumentKind kind) {
    Characteristic told = fitting(kind);
    GritClass fromNumber = told == null ? null : told.grit();
    GritClass typed = row.at("grit").isEmpty() ? null : Grits.find(row.at("grit")).orElse(null);
    if (!row.at("grit").isEmpty() && kind != null && kind.bladed()) {
      read.fault("grit", row.at("grit"), Remark.of("grit-blank-for", kind));
      return null;
    }
    if (!row.at("grit").isEmpty() && typed == null) {
      read.fault("grit", row.at("grit"), Remark.of("grit-known"));
      return null;
    }
    if (typed != null && fromNumber != null && typed != fromNumber) {
      read.fault(
          "grit",
          row.at("grit"),
          Remark.of("grit-of-number", number().number().characteristic(), fromNumber),
          fromNumber.label());
    }
    if (typed == null && fromNumber != null && told != null) {
      noteMemory(
          told.provenance().basis(),
          "grit-from-number",
          fromNumber,
          told.code(),
          told.provenance().basis());
    }
    if (typed == null && fromNumber == null && kind != null && kind.isDiamond()) {
      assumed.add(Remark.of("grit-unknown"));
    }
    return typed != null ? typed : fromNumber;
  }

  @Nullable Integer blades(@Nullable InstrumentKind kind) {
    Integer typed = read.whole("blades", row.at("blades"), 2, 60);
    if (kind == null) {
      return typed;
    }
    if (!kind.bladed()) {
      if (!row.at("blades").isEmpty()) {
        read.fault("blades", row.at("blades"), Remark.of("blades-blank-for", kind));
      }
      return null;
    }
    Characteristic told = fitting(kind);
    Integer usual = told == null ? null : told.usualBlades();
    Basis basis = told == null ? null : told.usualBladesBasis();
    if (typed != null) {
      if (usual != null && (usual >= 12) != (typed >= 12)) {
        assumed.add(Remark.of("blades-as-listed", typed, requireNonNull(told).code(), usual));
      }
      return typed;
    }
    if (us != null && us.bladesLow() != null) {
      Integer low = us.bladesLow();
      Integer high = us.bladesHigh();
      String range = low.equals(high) ? "" : " (usual " + low + " to " + high + ")";
      assumed.add(
          Remark.of(
              low.equals(high) ? "blades-usual-us" : "blades-usual-us-range",
              low,
              requireNonNull(high),
              us.number(),
              us.provenance().basis()));
      return low;
    }
    if (usual != null && basis != null && told != null) {
      assumed.add(Remark.of("blades-usual-number", usual, told.code(), basis));
      return usual;
    }
    if (!read.faulty("blades")) {
      assumed.add(Remark.of("blades-unknown"));
    }
    return null;
  }

  boolean crossCut() {
    Characteristic told = number == null ? null : number.characteristic();
    return told != null && told.crossCut() || us != null && us.crossCut();
  }

  /** The characteristic of the number; one that cannot belong to this kind is a fault, once. */
  private @Nullable Characteristic fitting(@Nullable InstrumentKind kind) {
    Characteristic told = number == null || number.rootCanal() ? null : number.characteristic();
    if (told == null || kind == null || told.appliesTo().fits(kind)) {
      return told;
    }
    boolean kindFits = number().workingPart() == null;
    if (kindFits && !read.faulty("kind")) {
      read.fault("kind", row.kind(), Remark.of("kind-of-characteristic", told.code()));
    }
    return null;
  }
}
