package kerfwright.app.storage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/**
 * The kinds of JSON documents that stand in columns, and the one way each is written and read. A
 * document begins with {@code layout}, the number of its layout; one without is of layout 1.
 * Components of records and constants are called as {@link StoredNames} tells. A layout that old
 * programs could not read, or that no longer reads an old document, gets the next number, a step in
 * {@link #tree} from the one before, and a pinned example {@code document/<kind>-<layout>.json}
 * (StoredDocumentPinnedTest).
 */
public enum StoredDocument {
  /** {@code day_book.document}: the appointments of a day and its plan. */
  DAY(1),
  /** {@code tray_template.document}. */
  TRAY(1),
  /** {@code stock_entry.item_before} and {@code item_after}. */
  ITEM(1),
  /** {@code steriliser_load.load}. */
  LOAD(1),
  /** {@code import_draft.list}: a list of instruments handed in. */
  LIST(1),
  /** {@code cut_run.sheet}: what the chair shows, read by its scripts too. */
  SHEET(1),
  /** {@code kept_case.document}. */
  CASE(1),
  /** {@code teaching_question.document}. */
  QUESTION(1),
  /** {@code teaching_set.document}. */
  SET(1),
  /** {@code practice_setting.value} of each {@code own-cut.<number>}. */
  OWN_CUT(1);

  private static final String LAYOUT = "layout";
  private static final ObjectMapper JSON = StoredNames.mapper();

  /** The layout that is written. */
  final int newest;

  StoredDocument(int newest) {
    this.newest = newest;
  }

  /** A document of a layout this program does not know. */
  static final class Newer extends IllegalStateException {
    private static final long serialVersionUID = 1;

    Newer(StoredDocument kind, int layout) {
      super(
          "Layout "
              + layout
              + " of a "
              + kind.name().toLowerCase(Locale.ROOT)
              + " is of a newer program; this one knows "
              + kind.newest);
    }
  }

  /** As it is written: a record, or a tree whose names are its own. */
  public String text(Object value) {
    ObjectNode fields = value instanceof ObjectNode tree ? tree : JSON.valueToTree(value);
    return JSON.createObjectNode().put(LAYOUT, newest).setAll(fields).toString();
  }

  public <T> T read(String text, Class<T> type) {
    try {
      return JSON.treeToValue(tree(text), type);
    } catch (JsonProcessingException broken) {
      throw broken(broken);
    }
  }

  /** Its fields in the newest layout, without the number. */
  public ObjectNode tree(String text) {
    ObjectNode fields;
    try {
      fields = (ObjectNode) JSON.readTree(text);
    } catch (JsonProcessingException | ClassCastException broken) {
      throw broken(broken);
    }
    int layout = 1;
    // cases and sets once called the number by names of their own
    for (String name : new String[] {LAYOUT, "kept", "set"}) {
      JsonNode number = fields.remove(name);
      layout = number == null ? layout : number.asInt();
    }
    if (layout > newest) {
      throw new Newer(this, layout);
    }
    return fields;
  }

  private IllegalStateException broken(Exception cause) {
    return new IllegalStateException("Broken JSON in the database: " + this, cause);
  }
}
