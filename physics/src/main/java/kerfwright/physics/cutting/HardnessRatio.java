package kerfwright.physics.cutting;

/**
 * Whether a tool is hard enough to cut a layer: it needs about 1.2 times the layer's hardness.
 * Share left = (H_t/H - 1)/0.4, between 0 and 1.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>H_t, H</td><td>Pa</td><td>hardness of the tool, of the layer</td></tr>
 * </table>
 *
 * <p>The straight line through the change of regime is ours; it leaves out that a hard phase may
 * wear a tool that is harder than the bulk, see EdgeWear.
 *
 * <p>Below the ratio the tool's own edge yields first and the layer is only rubbed: why a polymer
 * bur stops at sound dentine or enamel. Source: Khrushchov MM. Wear 1974;28:69-88 and Richardson
 * RCD. Wear 1968;11:245-275 (both from memory: the change of regime lies near 1.2). It only ever
 * takes instruments away, never allows one.
 */
public final class HardnessRatio {
  /** The ratio at the change of regime. */
  public static final double NEEDED = 1.2;

  private HardnessRatio() {}

  /** Share of full cutting ability left, 0 to 1: none at a ratio of 1, all of it from 1.4 up. */
  public static double cuttingShare(double toolHardnessPa, double workHardnessPa) {
    double ratio = toolHardnessPa / workHardnessPa;
    return Math.max(0, Math.min(1, (ratio - 1.0) / (2 * (NEEDED - 1.0))));
  }

  /** True where the tool can cut the layer at all. */
  public static boolean canCut(double toolHardnessPa, double workHardnessPa) {
    return toolHardnessPa >= NEEDED * workHardnessPa;
  }
}
