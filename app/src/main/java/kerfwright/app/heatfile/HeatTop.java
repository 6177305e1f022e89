package kerfwright.app.heatfile;

import java.util.List;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Fields;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * The field {@code top}: strokes and pauses on a round spot. While cutting, the coolant reaches the
 * top outside the spot; in pauses the spot too.
 */
record HeatTop(
    double spotRadiusMm, double flux, double onS, double offS, Coolant coolant, double feedMmPerS) {
  private static final Bounds SPOT = Bounds.above(0, 1000, "mm");
  private static final Bounds FLUX = Bounds.from(-1e9, 1e9, "W/m2");
  private static final Bounds SECONDS = Bounds.from(0, 36_000, "s");
  private static final Bounds TRANSFER = Bounds.from(0, 1e7, "W/(m2 K)");
  private static final Bounds TEMPERATURE = Bounds.from(-50, 500, "degC");
  private static final Bounds FEED = Bounds.from(0, 100, "mm/s");

  static @Nullable HeatTop read(Fields fields) {
    Fields top = fields.fields("top", Message.of("heat.top"), true);
    if (top == null) {
      return null;
    }
    Double spot = top.number("spot_radius_mm", SPOT, true);
    Double flux = top.number("flux_w_per_m2", FLUX, true);
    Double on = top.number("on_s", SECONDS, true);
    Double off = top.number("off_s", SECONDS, true);
    Double feed = top.number("feed_mm_per_s", FEED, false);
    Coolant coolant = coolant(top);
    top.rejectUnknown();
    if (on != null && off != null && on + off <= 0) {
      top.fault("on_s", Message.of("heat.no-stroke"));
      return null;
    }
    if (spot == null || flux == null || on == null || off == null) {
      return null;
    }
    return new HeatTop(spot, flux, on, off, coolant, feed == null ? 0 : feed);
  }

  private static Coolant coolant(Fields top) {
    Fields coolant = top.fields("coolant", Message.of("heat.coolant"), false);
    if (coolant == null) {
      return Coolant.NONE;
    }
    Double transfer = coolant.number("h_w_per_m2k", TRANSFER, true);
    Double temperature = coolant.number("temperature_c", TEMPERATURE, true);
    coolant.rejectUnknown();
    return transfer == null || temperature == null
        ? Coolant.NONE
        : new Coolant(transfer, temperature);
  }

  HeatSchedule schedule(double durationS) {
    return new HeatSchedule(
        spotRadiusMm,
        List.of(HeatStretch.strokes(durationS, flux, onS, offS, coolant, feedMmPerS)));
  }
}
