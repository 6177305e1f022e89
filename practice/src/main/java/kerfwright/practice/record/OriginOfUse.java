package kerfwright.practice.record;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * Where an instrument came from, and what should not have been so with it.
 *
 * @param origin load, pouch and lot
 * @param remarks what should not have been
 */
record OriginOfUse(Origin origin, List<Remark> remarks) {

  static OriginOfUse of(UseReport report, UUID item, Origins origins, ZoneId zone) {
    String code = report.pouch();
    Origins.Pouched pouch =
        (code.isEmpty() ? origins.lastOf(item, report.at()) : origins.pouch(code, item))
            .orElse(null);
    List<Remark> remarks = new ArrayList<>();
    if (pouch == null) {
      if (!code.isEmpty()) {
        remarks.add(Remark.of(Remark.Kind.POUCH_UNKNOWN, code));
      }
      return new OriginOfUse(new Origin(null, "", code, report.lot()), remarks);
    }
    if (!pouch.holds()) {
      remarks.add(Remark.of(Remark.Kind.NOT_IN_POUCH, pouch.pouch()));
    }
    Instant decided = pouch.decided();
    if (pouch.standing() == Origins.Standing.FAILED) {
      remarks.add(Remark.of(Remark.Kind.LOAD_FAILED, pouch.loadName()));
    } else if (decided == null || decided.isAfter(report.at())) {
      remarks.add(Remark.of(Remark.Kind.LOAD_NOT_RELEASED, pouch.loadName()));
    }
    LocalDate last = pouch.lastDay();
    if (last != null && report.at().atZone(zone).toLocalDate().isAfter(last)) {
      remarks.add(Remark.of(Remark.Kind.POUCH_EXPIRED, last.toString()));
    }
    Origin origin = new Origin(pouch.load(), pouch.loadName(), pouch.pouch(), report.lot());
    return new OriginOfUse(origin, remarks);
  }
}
