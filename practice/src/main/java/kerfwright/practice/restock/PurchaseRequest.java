package kerfwright.practice.restock;

import java.time.LocalDate;

/**
 * Something a planned day lacks, put on the order list.
 *
 * @param type the type of instrument, see {@link kerfwright.practice.daylist.TypeName}
 * @param day the day that lacks it
 * @param pieces how many more than there are
 */
public record PurchaseRequest(String type, LocalDate day, int pieces) {
  /** Most pieces of one wish. */
  public static final int MOST = 999;

  public PurchaseRequest {
    if (type.isBlank() || pieces < 1 || pieces > MOST) {
      throw new IllegalArgumentException("a wish for " + pieces + " of '" + type + "'");
    }
  }
}
