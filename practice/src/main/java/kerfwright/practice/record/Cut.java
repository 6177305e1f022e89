package kerfwright.practice.record;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How was cut; null stands for not known.
 *
 * @param setSpeedRpm speed set at the handpiece, per minute
 * @param cutSeconds seconds in contact
 * @param totalSeconds seconds from first to last contact, pauses included
 * @param loadN load on the tip, N
 * @param coolantMlPerMin water reaching the tip, mL/min; 0 is dry
 * @param mm3ByMaterial volume removed, by material id, mm3
 */
public record Cut(
    @Nullable Double setSpeedRpm,
    @Nullable Double cutSeconds,
    @Nullable Double totalSeconds,
    @Nullable Double loadN,
    @Nullable Double coolantMlPerMin,
    Map<String, Double> mm3ByMaterial) {
  /** Nothing is known but that it was used. */
  public static final Cut UNTOLD = new Cut(null, null, null, null, null, Map.of());

  /** Highest speed still read as meant and not as a slip, rpm. */
  public static final double MOST_RPM = 600_000;

  /** One working day, s. */
  public static final double MOST_SECONDS = 36_000;

  /** Greatest load taken for a figure, N. */
  public static final double MOST_N = 50;

  /** Greatest flow taken for a figure, mL/min. */
  public static final double MOST_ML_PER_MIN = 1000;

  /** Several teeth, mm3. */
  public static final double MOST_MM3 = 5000;

  public Cut {
    check("setSpeedRpm", setSpeedRpm, MOST_RPM);
    check("cutSeconds", cutSeconds, MOST_SECONDS);
    check("totalSeconds", totalSeconds, MOST_SECONDS);
    check("loadN", loadN, MOST_N);
    check("coolantMlPerMin", coolantMlPerMin, MOST_ML_PER_MIN);
    for (Map.Entry<String, Double> one : mm3ByMaterial.entrySet()) {
      if (!one.getKey().matches("[a-z0-9-]{1,60}")) {
        throw new IllegalArgumentException("Not a material id: '" + one.getKey() + "'");
      }
      check("mm3 of " + one.getKey(), one.getValue(), MOST_MM3);
    }
    if (cutSeconds != null && totalSeconds != null && cutSeconds > totalSeconds) {
      throw new IllegalArgumentException(
          "cutSeconds " + cutSeconds + " are more than totalSeconds " + totalSeconds);
    }
    mm3ByMaterial = java.util.Collections.unmodifiableMap(new TreeMap<>(mm3ByMaterial));
  }

  private static void check(String name, @Nullable Double value, double most) {
    if (value != null && !(value >= 0 && value <= most)) {
      throw new IllegalArgumentException(name + " must be 0 to " + most + ", got " + value);
    }
  }
}
