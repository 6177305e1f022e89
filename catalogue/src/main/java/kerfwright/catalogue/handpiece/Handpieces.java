package kerfwright.catalogue.handpiece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.physics.cutting.Drive;
import kerfwright.physics.cutting.GearedDrive;
import kerfwright.physics.cutting.TurbineDrive;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;

/**
 * Handpieces of the catalogue by id.
 *
 * <p>The stall torque of the turbine is not typed in: for a straight torque-speed line from stall
 * M0 to free running w0 the greatest power stands at half the free speed, P = M0 w0 / 4 (Dyson and
 * Darvell 1999, abstract: torque closely linear), so M0 = 4 P / w0 from the free speed and the peak
 * power of the data row.
 */
public final class Handpieces {
  private static final List<HandpieceEntry> ALL =
      Topic.read("handpiece/values.csv", Handpieces::entry);

  private Handpieces() {}

  /** Every handpiece with its figures, in the order of the file. */
  public static List<HandpieceEntry> entries() {
    return ALL;
  }

  public static List<Handpiece> all() {
    return entries().stream().map(HandpieceEntry::handpiece).toList();
  }

  public static List<String> ids() {
    return all().stream().map(Handpiece::id).toList();
  }

  /** The handpiece with this id; upper and lower case count the same. */
  public static Optional<Handpiece> byId(String id) {
    return entry(id).map(HandpieceEntry::handpiece);
  }

  /** The same with its figures. */
  public static Optional<HandpieceEntry> entry(String id) {
    String wanted = id.strip().toLowerCase(Locale.ROOT);
    return entries().stream().filter(each -> each.handpiece().id().equals(wanted)).findFirst();
  }

  /** M0 = 4 P / w0. */
  static Torque stallTorque(RotationalSpeed freeSpeed, double peakPowerW) {
    return new Torque(4 * peakPowerW / freeSpeed.radiansPerSecond());
  }

  private static HandpieceEntry entry(DataRow row) {
    ShankType shank = row.requiredOneOf("shank", ShankType.class);
    Provenance provenance = row.provenance();
    List<Remark> figures = new ArrayList<>();
    Drive drive =
        switch (row.required("drive")) {
          case "turbine" -> turbine(row, figures);
          case "geared" -> geared(row, figures);
          default -> {
            row.expected("drive", "turbine or geared");
            yield new TurbineDrive(new RotationalSpeed(1), new Torque(1));
          }
        };
    Handpiece handpiece =
        new Handpiece(
            row.required("handpiece"), row.required("label"), shank, drive, provenance.sources());
    return new HandpieceEntry(handpiece, figures, provenance);
  }

  private static Drive turbine(DataRow row, List<Remark> figures) {
    RotationalSpeed free = RotationalSpeed.ofRpm(row.requiredPositive("free_speed_rpm"));
    double power = row.requiredPositive("peak_power_w");
    double low = row.requiredPositive("peak_power_low_w");
    double high = row.requiredPositive("peak_power_high_w");
    if (low > power || power > high) {
      row.expected("peak_power_w", "a power between its low and high end");
    }
    Torque stall = stallTorque(free, power);
    figures.add(Remark.of("drive-free-speed", free.rpm()));
    figures.add(Remark.of("drive-power", power, low, high));
    figures.add(
        Remark.of(
            "drive-stall",
            stall.newtonMillimetres(),
            stallTorque(free, low).newtonMillimetres(),
            stallTorque(free, high).newtonMillimetres()));
    return new TurbineDrive(free, stall);
  }

  private static Drive geared(DataRow row, List<Remark> figures) {
    RotationalSpeed motor = RotationalSpeed.ofRpm(row.requiredPositive("motor_speed_rpm"));
    Torque torque = Torque.ofNewtonMillimetres(row.requiredPositive("motor_torque_n_mm"));
    double ratio = row.requiredPositive("ratio");
    double efficiency = row.requiredPositive("efficiency");
    if (efficiency > 1) {
      row.expected("efficiency", "a share not above 1");
    }
    GearedDrive drive = GearedDrive.of(motor, torque, ratio, efficiency);
    figures.add(Remark.of("drive-motor", motor.rpm()));
    figures.add(Remark.of("drive-torque", torque.newtonMillimetres()));
    figures.add(Remark.of(ratio < 1 ? "drive-ratio-set" : "drive-ratio", ratio));
    figures.add(Remark.of("drive-efficiency", efficiency));
    figures.add(
        Remark.of(
            "drive-at-instrument",
            drive.freeSpeed().rpm(),
            drive.stallTorque().newtonMillimetres()));
    return drive;
  }
}
