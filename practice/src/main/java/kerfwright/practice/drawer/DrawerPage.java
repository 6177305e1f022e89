package kerfwright.practice.drawer;

import java.util.List;

/**
 * One page of the list.
 *
 * @param items its items
 * @param found how many there are on all pages
 */
public record DrawerPage(List<StockItem> items, int found) {
  public DrawerPage {
    items = List.copyOf(items);
  }
}
