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
public record WishedArticles(Map<Article, List<Wish>> byArticle, List<Wish> unplaced) {
  public WishedArticles {
    byArticle = Map.copyOf(byArticle);
    unplaced = List.copyOf(unplaced);
  }

  public static WishedArticles of(List<Wish> wishes, List<StockItem> items) {
    Map<String, Article> byType = new HashMap<>();
    for (StockItem item : items) {
      if (!item.removed()) {
        Article article = new Article(item.properties(), item.singleUse());
        byType.merge(
            TypeName.of(item.properties()),
            article,
            (known, other) -> known.singleUse() && !other.singleUse() ? other : known);
      }
    }
    Map<Article, List<Wish>> placed = new LinkedHashMap<>();
    List<Wish> unplaced = new ArrayList<>();
    for (Wish wish : wishes) {
      Article article = byType.get(wish.type());
      if (article == null) {
        unplaced.add(wish);
      } else {
        placed.computeIfAbsent(article, any -> new ArrayList<>()).add(wish);
      }
    }
    return new WishedArticles(placed, unplaced);
  }

  public List<Wish> of(Article article) {
    return byArticle.getOrDefault(article, List.of());
  }
}
