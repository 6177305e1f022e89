package kerfwright.app.casefile;

import java.util.List;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** The field {@code tooth}: an FDI number, or one of fdi, universal and palmer below it. */
final class ToothField {
  private static final List<String> NOTATIONS = List.of("fdi", "universal", "palmer");
  private static final Message EXPECTED = Message.of("fault.tooth");

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
      faults.add(node.line(), "tooth", Message.of("fault.must-be", EXPECTED, node.found()));
      return null;
    }
    Fields below = new Fields(mapping, "tooth", faults);
    Tooth found = null;
    int given = 0;
    for (String notation : NOTATIONS) {
      if (below.optional(notation) != null) {
        given++;
        String text = below.text(notation, Message.of("fault.tooth-number"));
        if (text != null) {
          found = resolve(notation, text, "tooth." + notation, below.line(notation), faults);
        }
      }
    }
    below.rejectUnknown();
    if (given != 1) {
      faults.add(node.line(), "tooth", Message.of("fault.tooth-count", EXPECTED, given));
    }
    return found;
  }

  private @Nullable Tooth resolve(
      String notation, String text, String path, int line, Faults faults) {
    var tooth = catalogue.tooth(notation, text);
    if (tooth.isEmpty()) {
      faults.add(
          line, path, Message.of("fault.no-tooth", text, Message.of("fault.tooth-" + notation)));
      return null;
    }
    return tooth.get();
  }
}
