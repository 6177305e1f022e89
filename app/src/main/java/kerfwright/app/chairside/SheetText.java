package kerfwright.app.chairside;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.storage.StoredDocument;
import kerfwright.practice.chairside.CutRun;

/** What a page says of a run before its script takes over. */
public final class SheetText {
  private final JsonNode sheet;

  private SheetText(JsonNode sheet) {
    this.sheet = sheet;
  }

  public static SheetText of(CutRun run) {
    return new SheetText(StoredDocument.SHEET.tree(run.sheet()));
  }

  public String caseReference() {
    return sheet.path("case").asText();
  }

  public String toothName() {
    return sheet.path("toothName").asText();
  }

  public String procedure() {
    return sheet.path("procedure").asText();
  }

  public String query() {
    return sheet.path("query").asText();
  }

  public List<String> cautions() {
    List<String> all = new ArrayList<>();
    sheet.path("cautions").forEach(one -> all.add(one.asText()));
    return all;
  }

  /** All of it, for the script of the page. */
  public String json() {
    return sheet.toString();
  }
}
