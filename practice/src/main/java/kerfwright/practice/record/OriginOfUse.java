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
    return of(item, report.pouch(), report.lot(), report.at(), origins, zone);
  }

  /** Nobody reads the pouch of a handpiece at the chair: it came out of its last one. */
  static OriginOfUse ofHandpiece(UseReport report, UUID item, Origins origins, ZoneId zone) {
    return of(item, "", "", report.at(), origins, zone);
  }

  private static OriginOfUse of(
      UUID item, String code, String lot, Instant at, Origins origins, ZoneId zone) {
    Origins.Pouched pouch =
        (code.isEmpty() ? origins.lastOf(item, at) : origins.pouch(code, item)).orElse(null);
    List<Remark> remarks = new ArrayList<>();
    if (pouch == null) {
      if (!code.isEmpty()) {
        remarks.add(Remark.of(Remark.Kind.POUCH_UNKNOWN, code));
      }
      return new OriginOfUse(new Origin(null, "", code, lot), remarks);
    }
    if (!pouch.holds()) {
      remarks.add(Remark.of(Remark.Kind.NOT_IN_POUCH, pouch.pouch()));
    }
    Instant decided = pouch.decided();
    if (pouch.standing() == Origins.Standing.FAILED) {
      remarks.add(Remark.of(Remark.Kind.LOAD_FAILED, pouch.loadName()));
    } else if (decided == null || decided.isAfter(at)) {
      remarks.add(Remark.of(Remark.Kind.LOAD_NOT_RELEASED, pouch.loadName()));
    }
    LocalDate last = pouch.lastDay();
    if (last != null && at.atZone(zone).toLocalDate().isAfter(last)) {
      remarks.add(Remark.of(Remark.Kind.POUCH_EXPIRED, last.toString()));
    }
    Origin origin = new Origin(pouch.load(), pouch.loadName(), pouch.pouch(), lot);
    return new OriginOfUse(origin, remarks);
  }
}
