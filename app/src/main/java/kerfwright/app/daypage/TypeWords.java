package kerfwright.app.daypage;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.practice.daylist.TypeName;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;

/** Names instrument types in the practice's language, after a piece of the drawer. */
final class TypeWords {
  private final Drawer drawer;
  private long revision = -1;
  private Map<String, InstrumentProperties> known = Map.of();

  TypeWords(Drawer drawer) {
    this.drawer = drawer;
  }

  /** Every type there is in the drawer, by its name for people. */
  Map<String, String> all(Say say) {
    Map<String, String> words = new TreeMap<>();
    known().keySet().forEach(type -> words.put(type, of(say, type)));
    return words;
  }

  String of(Say say, String type) {
    InstrumentProperties what = known().get(type);
    if (what == null) {
      return other(say, type);
    }
    String words = Words.instrument(say, what);
    return type.endsWith("-long") ? say.at("day.long-one", words) : words;
  }

  /** A kind that is no rotary instrument has its own; a type nobody has keeps its plain name. */
  private static String other(Say say, String type) {
    return PieceKinds.byId(type)
        .map(kind -> Labels.piece(say, kind))
        .orElseGet(() -> type.replace('-', ' '));
  }

  /** A type in few words. */
  String brief(Say say, String type) {
    InstrumentProperties what = known().get(type);
    if (what == null) {
      return other(say, type);
    }
    String size = String.format(java.util.Locale.ROOT, "%.1f", what.headDiameter().millimetres());
    String words = Words.shortInstrument(say, what) + ", " + say.figures(size) + " mm";
    return type.endsWith("-long") ? say.at("day.long-one", words) : words;
  }

  private synchronized Map<String, InstrumentProperties> known() {
    long now = drawer.revision();
    if (now != revision) {
      Map<String, InstrumentProperties> found = new HashMap<>();
      for (InstrumentState state : InstrumentState.values()) {
        for (StockItem item : drawer.in(state)) {
          if (item.isRotary()) {
            found.putIfAbsent(TypeName.of(item.properties()), item.properties());
          }
        }
      }
      known = found;
      revision = now;
    }
    return known;
  }
}
