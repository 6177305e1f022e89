package kerfwright.practice.setting;

import java.util.List;

/**
 * What a new case begins with here.
 *
 * @param handpieces ids of the handpieces at hand; empty while nobody has said
 * @param coolantMlPerMin water at the tip, mL/min, as typed; empty while nobody has measured
 */
public record CaseSetting(List<String> handpieces, String coolantMlPerMin) {
  public static final String HANDPIECES = "case.handpieces";
  public static final String COOLANT = "case.coolant-ml-per-min";

  public CaseSetting {
    handpieces = List.copyOf(handpieces);
  }

  public static CaseSetting of(SettingValues set) {
    String ids = set.text(HANDPIECES, "");
    return new CaseSetting(
        ids.isEmpty() ? List.of() : List.of(ids.split(" ")), set.text(COOLANT, ""));
  }
}
