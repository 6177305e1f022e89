package kerfwright.practice.restock;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import org.jspecify.annotations.Nullable;

/**
 * Sets what is here against what the coming weeks need.
 *
 * <p>Uses are taken as a Poisson process: with N uses in the weeks of history the weeks ahead take
 * N ahead / history, and with 95 percent no more than that plus 1.645 times its root. A piece is
 * good for the uses {@link UsesLeft} says. So many pieces are ordered that the typical life of all
 * covers the cautious need, or as many as a planned day lacks where that is more. Pieces that
 * expire within the weeks ahead do not count. What has no wear model is replaced as it leaves
 * ({@link PieceReplacing}).
 */
public final class Restocking {
  private static final double CAUTIOUS = 1.645;
  private static final double DAYS_A_WEEK = 7;
  private static final int SHOWN_LABELS = 6;
  private static final Set<InstrumentState> GONE = EnumSet.of(InstrumentState.WITHDRAWN);

  private final LocalDate today;
  private final RestockOptions options;
  private final ToDoubleFunction<StockItem> wearFactor;

  /**
   * @param wearFactor how many times as fast as in the literature an item wears here
   */
  public Restocking(
      LocalDate today, RestockOptions options, ToDoubleFunction<StockItem> wearFactor) {
    this.today = today;
    this.options = options;
    this.wearFactor = wearFactor;
  }

  /**
   * What else is known of the items.
   *
   * @param began day of the first use in the record, null where there is none
   * @param expires last day of use of the packages that have one, by item
   * @param planned uses of an article that days already planned ask for
   * @param requests what planned days lack
   * @param history the lines of an item, oldest first
   * @param zone where days begin
   */
  public record Outlook(
      @Nullable LocalDate began,
      Map<UUID, LocalDate> expires,
      ToIntFunction<Article> planned,
      List<PurchaseRequest> requests,
      Function<UUID, List<DrawerEntry>> history,
      ZoneId zone) {}

  /**
   * The report.
   *
   * @param items every item, withdrawn and removed ones too: past uses are known by them
   */
  public RestockReport report(List<StockItem> items, List<PastUse> uses, Outlook outlook) {
    LocalDate from = today.minusWeeks(options.historyWeeks());
    List<PastUse> recent = uses.stream().filter(use -> !use.day().isBefore(from)).toList();
    double weeks = weeks(outlook.began());
    Map<UUID, StockItem> byId = new HashMap<>();
    Map<Article, List<StockItem>> byArticle = new LinkedHashMap<>();
    for (StockItem item : items) {
      if (!item.isRotary()) {
        continue; // without a wear model nothing can be reckoned ahead
      }
      byId.put(item.id(), item);
      byArticle.computeIfAbsent(Article.of(item), any -> new ArrayList<>()).add(item);
    }
    RequestedArticles wishes = RequestedArticles.of(outlook.requests(), items);
    Map<Article, Map<LocalDate, Integer>> used = new HashMap<>();
    for (PastUse use : recent) {
      StockItem item = byId.get(use.item());
      if (item != null) {
        used.computeIfAbsent(Article.of(item), any -> new HashMap<>())
            .merge(use.day(), 1, Integer::sum);
      }
    }
    List<ArticleNeed> needs = new ArrayList<>();
    byArticle.forEach(
        (article, its) -> {
          ArticleNeed need =
              need(article, its, used.getOrDefault(article, Map.of()), weeks, wishes, outlook);
          if (need.pieces() + need.worn() > 0 || need.order() > 0) {
            needs.add(need);
          }
        });
    needs.sort(
        Comparator.comparing((ArticleNeed need) -> need.order() == 0)
            .thenComparing(need -> -missing(need))
            .thenComparing(need -> need.labels().isEmpty() ? "" : need.labels().get(0)));
    Costs costs =
        Costs.of(
            recent,
            byId::get,
            item -> UsesLeft.of(item, wearFactor.applyAsDouble(item)).shareOfUse());
    return new RestockReport(
        options,
        needs,
        new PieceReplacing(from.atStartOfDay(outlook.zone()).toInstant(), outlook.history())
            .needs(items, wishes.unplaced()),
        costs,
        weeks);
  }

  private static double missing(ArticleNeed need) {
    return need.needHigh() - need.left()[1];
  }

  /** A record that began lately is not taken for a quiet practice. */
  private double weeks(@Nullable LocalDate began) {
    if (began == null) {
      return 0;
    }
    double reach = ChronoUnit.DAYS.between(began, today) / DAYS_A_WEEK;
    return Math.max(1, Math.min(options.historyWeeks(), reach));
  }

  private ArticleNeed need(
      Article article,
      List<StockItem> items,
      Map<LocalDate, Integer> used,
      double weeks,
      RequestedArticles wishes,
      Outlook outlook) {
    Count here = new Count();
    items.stream().filter(item -> !item.removed()).forEach(item -> here.add(item, outlook));
    int all = used.values().stream().mapToInt(Integer::intValue).sum();
    double weekly = weeks == 0 ? 0 : all / weeks;
    int planned = outlook.planned().applyAsInt(article);
    double need = Math.max(planned, weekly * options.aheadWeeks());
    double high = need == 0 ? 0 : Math.max(planned, need + CAUTIOUS * Math.sqrt(need));
    double perPiece = article.singleUse() ? 1 : here.usesOfNewPiece;
    int busiest = used.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    int order = (int) Math.ceil(Math.max(0, high - here.left[1]) / perPiece - 1e-9);
    List<PurchaseRequest> requests = wishes.of(article);
    int wished = requests.stream().mapToInt(PurchaseRequest::pieces).max().orElse(0);
    List<ArticleNeed.Reason> reasons = new ArrayList<>();
    if (wished > 0) {
      reasons.add(ArticleNeed.Reason.WISHED);
    }
    if (order > 0) {
      reasons.add(
          here.left[1] < need
              ? ArticleNeed.Reason.BELOW_NEED
              : ArticleNeed.Reason.BELOW_CAUTIOUS_NEED);
    }
    if (here.worn > 0) {
      reasons.add(ArticleNeed.Reason.WORN_OUT);
    }
    if (here.expiring > 0) {
      reasons.add(ArticleNeed.Reason.EXPIRING);
    }
    if (busiest > here.pieces && !article.singleUse()) {
      reasons.add(ArticleNeed.Reason.BUSIEST_DAY);
    }
    if (all == 0 && planned == 0 && wished == 0) {
      reasons.add(ArticleNeed.Reason.UNUSED);
    }
    return new ArticleNeed(
        article,
        here.labels,
        here.pieces,
        here.worn,
        here.expiring,
        here.left,
        weekly,
        need,
        high,
        planned,
        busiest,
        Math.max(order, wished),
        price(items),
        reasons,
        requests,
        weekly == 0 ? null : wornOut(here.left, weekly));
  }

  private LocalDate[] wornOut(double[] left, double weekly) {
    LocalDate[] days = new LocalDate[left.length];
    for (int i = 0; i < left.length; i++) {
      days[i] = today.plusDays(Math.min(36_500, Math.round(left[i] / weekly * DAYS_A_WEEK)));
    }
    return days;
  }

  /** The last price written down. */
  static @Nullable BigDecimal price(List<StockItem> items) {
    return items.stream()
        .sorted(Comparator.comparing((StockItem item) -> item.id().toString()).reversed())
        .map(StockItem::price)
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  /** What is here of one article. */
  private final class Count {
    private final List<String> labels = new ArrayList<>();
    private final double[] left = new double[3];
    private int pieces;
    private int worn;
    private int expiring;
    private double usesOfNewPiece = 1;

    void add(StockItem item, Outlook outlook) {
      double factor = wearFactor.applyAsDouble(item);
      StockItem fresh =
          item.next(
              draft -> {
                draft.uses = 0;
                draft.sterilisations = 0;
                draft.cutMm3ByMaterial.clear();
              });
      usesOfNewPiece = Math.max(1, UsesLeft.of(fresh, factor).typical());
      if (GONE.contains(item.state())) {
        return;
      }
      LocalDate last = outlook.expires().get(item.id());
      boolean expires = last != null && last.isBefore(today.plusWeeks(options.aheadWeeks()));
      UsesLeft life = UsesLeft.of(item, factor);
      if (life.worn()) {
        worn += item.pieces();
        return;
      }
      if (expires) {
        expiring += item.pieces();
        return;
      }
      pieces += item.pieces();
      left[0] += item.pieces() * life.low();
      left[1] += item.pieces() * life.typical();
      left[2] += item.pieces() * life.high();
      if (labels.size() < SHOWN_LABELS) {
        labels.add(item.label());
      }
    }
  }
}
