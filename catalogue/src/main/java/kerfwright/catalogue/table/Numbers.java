package kerfwright.catalogue.table;

import org.jspecify.annotations.Nullable;

/** Low, typical and high of a row as printed; blanks stay blank. */
public record Numbers(@Nullable Double low, @Nullable Double typical, @Nullable Double high) {
  boolean ordered() {
    return rises(low, typical) && rises(typical, high) && rises(low, high);
  }

  /** Whether all three are given. */
  public boolean complete() {
    return low != null && typical != null && high != null;
  }

  private static boolean rises(@Nullable Double a, @Nullable Double b) {
    return a == null || b == null || a <= b;
  }
}
