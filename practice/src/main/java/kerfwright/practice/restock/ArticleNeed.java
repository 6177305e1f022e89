package kerfwright.practice.restock;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * One article against what the coming weeks need.
 *
 * @param article what
 * @param labels what the pieces here are called, the first few
 * @param pieces pieces that may still be used
 * @param worn pieces that are worn out by the models and still in the round
 * @param expiring pieces whose package expires within the weeks looked at
 * @param left uses left in all pieces, low, typical and high
 * @param weeklyUses uses a week
 * @param need uses the weeks ahead take, typical
 * @param needHigh the same, exceeded in one of twenty stretches of that length
 * @param planned uses already asked for by days that are planned
 * @param busiestDay most uses on one day
 * @param order pieces to buy, 0 for none
 * @param price price of a piece, null where none is known
 * @param reasons why, in order of weight
 * @param requests what planned days lack of it
 * @param wornOut when the last use of what is here is had: early, typical, late; null where nothing
 *     is used
 */
public record ArticleNeed(
    Article article,
    List<String> labels,
    int pieces,
    int worn,
    int expiring,
    double[] left,
    double weeklyUses,
    double need,
    double needHigh,
    int planned,
    int busiestDay,
    int order,
    @Nullable BigDecimal price,
    List<Reason> reasons,
    List<PurchaseRequest> requests,
    LocalDate @Nullable [] wornOut) {
  public ArticleNeed {
    labels = List.copyOf(labels);
    reasons = List.copyOf(reasons);
    requests = List.copyOf(requests);
  }

  /** Why something should be bought, or should be looked at. */
  public enum Reason implements Identified {
    /** A planned day lacks it, and somebody put it on the list. */
    WISHED,
    /** Fewer uses are left than the weeks ahead take. */
    BELOW_NEED,
    /** Enough at the typical figures, not at the cautious ones. */
    BELOW_CAUTIOUS_NEED,
    /** Pieces are worn out and should be withdrawn. */
    WORN_OUT,
    /** Packages expire. */
    EXPIRING,
    /** On the busiest day more were used than there are. */
    BUSIEST_DAY,
    /** None was used in the weeks looked at. */
    UNUSED
  }

  public @Nullable BigDecimal cost() {
    return price == null ? null : price.multiply(BigDecimal.valueOf(order));
  }
}
