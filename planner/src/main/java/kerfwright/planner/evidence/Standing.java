package kerfwright.planner.evidence;

import kerfwright.catalogue.evidence.CaseLists;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.quantity.Identified;

/** Whether a case counts, and why not. */
public enum Standing implements Identified {
  /** No constant rests on its source, and it could fail. */
  COUNTED,
  /** A constant rests on its source. */
  CALIBRATION,
  /** It cannot fail, whatever the constants are. */
  BY_CONSTRUCTION,
  /** Load or time is neither told nor drawn: the figure is compared, and counts for nothing. */
  CONDITIONS_UNTOLD;

  static Standing of(EvidenceCase asked) {
    if (CaseLists.packaged().byConstruction().containsKey(asked.id())) {
      return BY_CONSTRUCTION;
    }
    if (asked.row().role() != EvidenceRow.Role.VALIDATION) {
      return CALIBRATION;
    }
    boolean value = asked.comparison() == EvidenceCase.Comparison.VALUE;
    return value && fixedWithoutWord(asked.first()) ? CONDITIONS_UNTOLD : COUNTED;
  }

  /** A load or time set at one value though the source does not tell it. */
  private static boolean fixedWithoutWord(SetUp setUp) {
    return setUp.ordered().stream()
        .filter(c -> decides(c.kind()))
        .anyMatch(c -> !c.told() && c.low() == c.high());
  }

  private static boolean decides(ConditionKind kind) {
    return switch (kind) {
      case LOAD, MINUTES, SECONDS, VOLUME -> true;
      default -> false;
    };
  }

  /** Whether every condition that decides a figure is told or drawn; used for the fits too. */
  static boolean isValue(EvidenceCase asked) {
    return asked.comparison() == EvidenceCase.Comparison.VALUE && !fixedWithoutWord(asked.first());
  }
}
