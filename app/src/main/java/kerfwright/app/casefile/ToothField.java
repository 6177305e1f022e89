package kerfwright.app.casefile;

import java.util.List;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.catalogue.tooth.Tooth;
import org.jspecify.annotations.Nullable;

/** The field {@code tooth}: an FDI number, or one of fdi, universal and palmer below it. */
final class ToothField {
  private static final List<String> NOTATIONS = List.of("fdi", "universal", "palmer");
  private static final String EXPECTED =
      "a tooth such as {fdi: 16}, {universal: 3} or {palmer: UR6}";

  private final CaseCatalogue catalogue;

  ToothField(CaseCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  @Nullable Tooth read(Fields fields, Faults faults) {
    Node node = fields.required("tooth", EXPECTED);
    if (node == null) {
      return null;
    }
    if (node instanceof Node.Scalar scalar) {
      return resolve("fdi", scalar.text().strip(), "tooth", node.line(), faults);
    }
    if (!(node instanceof Node.Mapping mapping)) {
      faults.add(node.line(), "tooth", "must be " + EXPECTED + ", found " + node.describe());
      return null;
    }
    Fields below = new Fields(mapping, "tooth", faults);
    Tooth found = null;
    int given = 0;
    for (String notation : NOTATIONS) {
      if (below.optional(notation) != null) {
        given++;
        String text = below.text(notation, "a tooth number");
        if (text != null) {
          found = resolve(notation, text, "tooth." + notation, below.line(notation), faults);
        }
      }
    }
    below.rejectUnknown();
    if (given != 1) {
      faults.add(
          node.line(), "tooth", "must be " + EXPECTED + ", found " + given + " of these fields");
    }
    return found;
  }

  private @Nullable Tooth resolve(
      String notation, String text, String path, int line, Faults faults) {
    var tooth = catalogue.tooth(notation, text);
    if (tooth.isEmpty()) {
      faults.add(
          line,
          path,
          "there is no tooth '" + text + "' in this notation; expected " + rule(notation));
      return null;
    }
    return tooth.get();
  }

  private static String rule(String notation) {
    return switch (notation) {
      case "universal" -> "1 to 32, or A to T";
      case "palmer" -> "UR, UL, LR or LL with 1 to 8, or A to E";
      default ->
          "FDI 11 to 18, 21 to 28, 31 to 38, 41 to 48, or 51 to 55, 61 to 65, 71 to 75, 81"
              + " to 85";
    };
  }
}
