package kerfwright.app.words;

import java.util.Optional;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.planner.operation.Cue;
import kerfwright.planner.operation.Work;
import kerfwright.quantity.Message;

/** What the operations of a plan are called, how they are led and when they end. */
public final class OperationTexts {
  private OperationTexts() {}

  /** One of a work's texts: name, cue, stop, hazard or way; empty where it has none. */
  public static Optional<String> of(Say say, Work work, String text) {
    return said(say, work.text(text));
  }

  /** One of a cue's texts: name, cue, stop, hazard, way or when; empty where it has none. */
  public static Optional<String> of(Say say, Cue cue, String text) {
    return said(say, cue.text(text));
  }

  /** A hand instrument, tip or brush by its id; an id without a name stays as it is. */
  public static String tool(Say say, String id) {
    String key = "operation.tool-" + id;
    return say.has(key) ? say.at(key) : id;
  }

  /** What an operation is called by its variant and row; a row that is gone is told by its id. */
  public static String name(Say say, String operation) {
    String key = "operation." + operation + ".name";
    return say.has(key) ? say.at(key) : operation;
  }

  /** Takes the texts of operations read from a folder; called once, when the program starts. */
  public static void take(OperationTable table) {
    for (Language language : Language.values()) {
      Bundles.also(language, table.texts(language.id()));
    }
  }

  private static Optional<String> said(Say say, Message message) {
    return say.has(message.key()) ? Optional.of(say.of(message)) : Optional.empty();
  }
}
