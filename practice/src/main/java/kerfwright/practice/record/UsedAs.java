package kerfwright.practice.record;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.piece.PieceKind;
import kerfwright.practice.drawer.StockItem;
import kerfwright.quantity.RotationalSpeed;
import org.jspecify.annotations.Nullable;

/** The instrument as the record names it, and whether it was set as its maker allows. */
final class UsedAs {
  private static final Duration CLOCKS_MAY_DIFFER = Duration.ofMinutes(5);

  private UsedAs() {}

  static UsedInstrument instrument(StockItem item, @Nullable UUID pieceOf) {
    InstrumentProperties what = item.rotary();
    String words =
        what == null
            ? item.fields().kind()
            : what.iso() != null
                ? what.iso()
                : String.format(
                    Locale.ROOT,
                    "%s %s %.1f mm",
                    what.us() == null ? what.kind().label() : "US " + what.us(),
                    what.shapeName(),
                    what.headDiameter().millimetres());
    return new UsedInstrument(item.id(), item.label(), words, pieceOf);
  }

  static boolean isHandpiece(StockItem item) {
    return item.pieceKind().filter(kind -> kind.sort() == PieceKind.Sort.HANDPIECE).isPresent();
  }

  static List<Remark> remarks(StockItem item, UseReport report, Instant now) {
    List<Remark> remarks = new ArrayList<>();
    Double set = report.cut().setSpeedRpm();
    RotationalSpeed greatest = item.isRotary() ? item.properties().maximumSpeed() : null;
    // a tenth of a turn is no fault of the setting but of the division by 60
    if (set != null && greatest != null && set > greatest.rpm() + 0.1) {
      remarks.add(Remark.of(Remark.Kind.TOO_FAST, whole(set), whole(greatest.rpm())));
    }
    if (report.at().isAfter(now.plus(CLOCKS_MAY_DIFFER))) {
      remarks.add(Remark.of(Remark.Kind.CLOCK_AHEAD));
    }
    return remarks;
  }

  private static String whole(double value) {
    return Long.toString(Math.round(value));
  }
}
