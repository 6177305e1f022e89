package kerfwright.practice.restock;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Everything about restocking.
 *
 * @param options how far was looked
 * @param needs by article, those to order first
 * @param pieces handpieces, hand instruments and tips to order, by kind, and what planned days lack
 *     and nothing here is like
 * @param costs what cutting costs
 * @param weeksOfHistory weeks the record really reaches back, at most those of the options
 */
public record RestockReport(
    RestockOptions options,
    List<ArticleNeed> needs,
    List<PieceNeed> pieces,
    Costs costs,
    double weeksOfHistory) {
  public RestockReport {
    needs = List.copyOf(needs);
    pieces = List.copyOf(pieces);
  }

  public List<ArticleNeed> orders() {
    return needs.stream().filter(one -> one.order() > 0).toList();
  }

  /** Things to order, of what is here and of what is not. */
  public int toOrder() {
    return orders().size() + pieces.size();
  }

  /** What the orders with a known price cost. */
  public BigDecimal total() {
    return Stream.concat(
            orders().stream().map(ArticleNeed::cost), pieces.stream().map(PieceNeed::cost))
        .filter(Objects::nonNull)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Orders without a known price. */
  public long unpriced() {
    return orders().stream().filter(one -> one.price() == null).count()
        + pieces.stream().filter(one -> one.price() == null).count();
  }
}
