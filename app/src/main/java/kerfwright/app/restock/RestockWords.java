package kerfwright.app.restock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.practice.restock.Article;
import kerfwright.practice.restock.ArticleNeed;
import kerfwright.practice.restock.PieceNeed;
import kerfwright.practice.restock.PurchaseRequest;
import kerfwright.practice.restock.RestockReport;
import org.jspecify.annotations.Nullable;

/** Articles, reasons and figures of restocking in words. */
public final class RestockWords {
  private RestockWords() {}

  public static String article(Say say, Article article) {
    return Words.shortInstrument(say, article.properties())
        + (article.singleUse() ? ", " + say.at("restock.single-use") : "");
  }

  public static String number(Article article) {
    return Words.number(article.properties());
  }

  /** Why, as one sentence. */
  public static String reason(
      Say say, ArticleNeed need, ArticleNeed.Reason reason, int aheadWeeks) {
    String key = "restock.reason-" + reason.id();
    return switch (reason) {
      case BELOW_NEED, BELOW_CAUTIOUS_NEED ->
          say.at(
              key,
              aheadWeeks,
              figure(need.need()),
              figure(need.left()[1]),
              figure(need.needHigh()));
      case WORN_OUT -> say.at(key, need.worn());
      case EXPIRING -> say.at(key, need.expiring());
      case BUSIEST_DAY -> say.at(key, need.busiestDay(), need.pieces());
      case WISHED -> requests(say, need.requests());
      case UNUSED -> say.at(key);
    };
  }

  private static String requests(Say say, List<PurchaseRequest> requests) {
    return requests.stream().map(request -> request(say, request)).collect(Collectors.joining(" "));
  }

  /** Which day lacks how many. */
  public static String request(Say say, PurchaseRequest request) {
    return say.at("restock.reason-wished", say.day(request.day()), request.pieces());
  }

  /** Why pieces of a kind should be bought: what left, and what a planned day lacks. */
  public static List<String> reasons(Say say, PieceNeed need, int historyWeeks) {
    List<String> reasons = new ArrayList<>();
    if (need.left() > 0) {
      reasons.add(
          say.at("restock.reason-gone", need.left(), historyWeeks, String.join(", ", need.gone())));
    }
    if (need.added() > 0) {
      reasons.add(say.at("restock.reason-added", need.added()));
    }
    need.requests().forEach(wish -> reasons.add(request(say, wish)));
    return reasons;
  }

  /** A kind of pieces by its label, a type that is not here by its plain name. */
  public static String type(Say say, String type) {
    return PieceKinds.byId(type)
        .map(kind -> Labels.piece(say, kind))
        .orElseGet(() -> type.replace('-', ' '));
  }

  public static String left(Say say, ArticleNeed need) {
    double[] left = need.left();
    return left[0] == left[2]
        ? round(say, left[1])
        : round(say, left[1])
            + " ("
            + say.at("restock.between", round(say, left[0]), round(say, left[2]))
            + ")";
  }

  public static String wornOut(Say say, ArticleNeed need) {
    LocalDate[] out = need.wornOut();
    return out == null
        ? ""
        : say.day(out[1])
            + " ("
            + say.at("restock.between", say.day(out[0]), say.day(out[2]))
            + ")";
  }

  public static String price(Say say, @Nullable BigDecimal price) {
    return price == null ? say.at("restock.no-price") : money(say, price);
  }

  /** What all orders cost, and how many of them have no known price. */
  public static String total(Say say, RestockReport report) {
    if (report.unpriced() > 0 && report.unpriced() == report.toOrder()) {
      return say.at("restock.no-prices");
    }
    String total = say.at("restock.total", money(say, report.total()));
    return report.unpriced() == 0
        ? total + "."
        : total + ", " + say.at("restock.unpriced", report.unpriced()) + ".";
  }

  public static String money(Say say, @Nullable BigDecimal price) {
    return price == null ? say.at("restock.not-known") : say.figures(price.toPlainString());
  }

  /** An amount in the practice's currency, to the hundredth, small ones to two figures. */
  public static String amount(Say say, double amount) {
    String text =
        amount > 0 && amount < 0.1
            ? BigDecimal.valueOf(amount).round(new java.math.MathContext(2)).toPlainString()
            : String.format(Locale.ROOT, "%.2f", amount);
    return say.figures(text);
  }

  /** A number of uses or mm3: whole from ten on, else with one decimal. */
  public static String round(Say say, double number) {
    return figure(number) instanceof BigDecimal tenths
        ? say.figures(tenths.toPlainString())
        : say.whole(Math.round(number));
  }

  /** The same as a figure of a text, which may ask whether it is one. */
  public static Number figure(double number) {
    BigDecimal tenths = BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
    return number >= 10 || number == Math.rint(number) ? Math.round(number) : tenths;
  }

  public static String procedure(Say say, String id) {
    return id.isEmpty() || !say.has("label.procedure-" + id)
        ? say.at("restock.no-procedure")
        : say.at("label.procedure-" + id);
  }

  public static String material(Say say, String id) {
    return say.has("label.material-" + id) ? Labels.material(say, id) : id;
  }
}
