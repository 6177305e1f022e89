package kerfwright.practice.restock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.practice.daylist.TypeName;
import kerfwright.practice.drawer.StockItem;

/**
 * Which article each wish is for: the first in the drawer of the type wished for, one that is
 * reprocessed before one for single use.
 *
 * @param byArticle wishes by article
 * @param unplaced wishes for what is not in the drawer
 */
record RequestedArticles(
    Map<Article, List<PurchaseRequest>> byArticle, List<PurchaseRequest> unplaced) {
  static RequestedArticles of(List<PurchaseRequest> requests, List<StockItem> items) {
    Map<String, Article> byType = new HashMap<>();
    for (StockItem item : items) {
      if (!item.removed() && item.isRotary()) {
        byType.merge(
            TypeName.of(item.properties()),
            Article.of(item),
            (known, other) -> known.singleUse() && !other.singleUse() ? other : known);
      }
    }
    Map<Article, List<PurchaseRequest>> placed = new LinkedHashMap<>();
    List<PurchaseRequest> unplaced = new ArrayList<>();
    for (PurchaseRequest request : requests) {
      Article article = byType.get(request.type());
      if (article == null) {
        unplaced.add(request);
      } else {
        placed.computeIfAbsent(article, any -> new ArrayList<>()).add(request);
      }
    }
    return new RequestedArticles(placed, unplaced);
  }

  List<PurchaseRequest> of(Article article) {
    return byArticle.getOrDefault(article, List.of());
  }
}
