package kerfwright.practice.day;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.NearestName;

/** What a stock must keep to. */
final class StockCheck {
  private StockCheck() {}

  static void check(List<Stock> stock, List<DayFault> faults) {
    Set<String> names = new HashSet<>();
    for (int i = 0; i < stock.size(); i++) {
      Stock s = stock.get(i);
      String at = "instruments[" + i + "]";
      if (s.type().isBlank()) {
        faults.add(new DayFault(at + ".type", "is empty", "the name of an instrument type"));
      } else if (!names.add(s.type())) {
        faults.add(
            new DayFault(at + ".type", "\"" + s.type() + "\" is listed twice", "each type once"));
      }
      if (s.life() <= 0) {
        faults.add(new DayFault(at + ".life", "is " + s.life(), "a number of uses above zero"));
      }
      for (int u = 0; u < s.uses().size(); u++) {
        int uses = s.uses().get(u);
        if (uses < 0 || uses > s.life()) {
          faults.add(
              new DayFault(
                  at + ".used[" + u + "]", "is " + uses, "0 to the life of " + s.life() + " uses"));
        }
      }
      for (int u : s.dirty()) {
        if (u < 0 || u >= s.uses().size()) {
          faults.add(
              new DayFault(
                  at + ".dirty", "names instrument " + u, "an index below " + s.uses().size()));
        }
      }
    }
  }

  /** What was expected where a type is in no stock. */
  static String listedType(String given, Collection<String> types) {
    return "a type listed under instruments; " + NearestName.hint(given, types);
  }
}
