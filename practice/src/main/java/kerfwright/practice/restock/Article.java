package kerfwright.practice.restock;

import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.practice.drawer.StockItem;

/**
 * What pieces have in common that are bought as one thing.
 *
 * @param properties what they are
 * @param singleUse never reprocessed
 */
public record Article(InstrumentProperties properties, boolean singleUse) {
  static Article of(StockItem item) {
    return new Article(item.properties(), item.singleUse());
  }
}
