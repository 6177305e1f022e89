package kerfwright.app.drawer;

import java.util.LinkedHashMap;
import java.util.Map;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.piece.PieceKinds;

/** What may be chosen for a field that says what an instrument is. */
public final class FieldChoices {
  private FieldChoices() {}

  /**
   * What is written down, with what it is called; empty where the field is typed.
   *
   * @param now what is written down now; where it is none of the usual, it can stay so
   */
  public static Map<String, String> of(Say say, String field, String now) {
    Map<String, String> choices = new LinkedHashMap<>();
    switch (field) {
      case "kind" -> {
        for (InstrumentKind kind : InstrumentKind.values()) {
          choices.put(kind.id(), Labels.kind(say, kind));
        }
        PieceKinds.all().forEach(kind -> choices.put(kind.id(), Labels.piece(say, kind)));
      }
      case "grit" -> {
        for (GritClass grit : GritClass.values()) {
          choices.put(grit.id(), Labels.grit(say, grit));
        }
      }
      case "shank" -> {
        for (ShankType shank : ShankType.values()) {
          choices.put(shank.name(), shank.name());
        }
      }
      case "shape" -> shapes(say, choices);
      default -> {
        return choices;
      }
    }
    if (!now.isEmpty()) {
      choices.putIfAbsent(now, now);
    }
    return choices;
  }

  private static void shapes(Say say, Map<String, String> choices) {
    for (InstrumentShape shape : Shapes.all()) {
      if (!shape.rootCanal()) {
        boolean coded = !shape.code().isEmpty();
        String name = Labels.shape(say, shape);
        choices.put(
            coded ? shape.code() : shape.name(),
            coded ? say.at("drawer.shape-option", shape.code(), name) : name);
      }
    }
  }
}
