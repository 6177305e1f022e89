package kerfwright.app.reference;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import kerfwright.app.json.JsonText;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.alike.Difference;
import kerfwright.planner.alike.Neighbour;

/** The answer in words for the command line, and as JSON (alike/1). */
public final class AlikeText {
  private AlikeText() {}

  public static String text(AlikeAnswer answer, List<String> assumed) {
    StringBuilder text = new StringBuilder("Wanted: ");
    text.append(Words.instrument(answer.wanted())).append('\n');
    assumed.forEach(each -> text.append("  taken as usual: ").append(each).append('\n'));
    text.append(answer.how(Say.in(Language.ENGLISH))).append(" 100 is the same.\n");
    list(text, "In the drawer", answer.drawer());
    list(text, "In the catalogue (read the speed limit on the label)", answer.catalogue());
    return text.toString();
  }

  private static void list(StringBuilder text, String title, List<Neighbour> neighbours) {
    text.append('\n').append(title).append('\n');
    if (neighbours.isEmpty()) {
      text.append("  none\n");
    }
    for (Neighbour each : neighbours) {
      text.append(
          String.format(
              Locale.ROOT,
              "  %3.0f  %s: %s%s\n",
              each.score(),
              each.instrument().id(),
              Words.instrument(each.instrument().properties()),
              number(each)));
      if (each.differences().isEmpty()) {
        text.append("       no difference that is noticed\n");
      }
      for (Difference difference : each.differences()) {
        boolean stops = difference.effect() == Difference.Effect.STOPS;
        text.append(stops ? "     ! " : "       ").append(difference.text()).append('\n');
      }
    }
  }

  private static String number(Neighbour each) {
    String number = Words.number(each.instrument().properties());
    return number.isEmpty() ? "" : " [" + number + "]";
  }

  public static ObjectNode json(AlikeAnswer answer, List<String> assumed) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "alike/1");
    json.put("wanted", Words.instrument(answer.wanted()));
    ArrayNode taken = json.putArray("assumed");
    assumed.forEach(taken::add);
    json.put("handpiece", answer.alike().handpiece());
    json.set("loadN", JsonText.number(answer.alike().loadN()));
    ArrayNode materials = json.putArray("materials");
    answer.alike().materials().forEach(each -> materials.add(each.id()));
    json.set("drawer", neighbours(answer.drawer()));
    json.set("catalogue", neighbours(answer.catalogue()));
    return json;
  }

  private static ArrayNode neighbours(List<Neighbour> all) {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    for (Neighbour each : all) {
      ObjectNode one = array.addObject();
      one.put("id", each.instrument().id());
      one.set("score", JsonText.number(each.score()));
      one.put("standsIn", each.standsIn());
      one.put("instrument", Words.instrument(each.instrument().properties()));
      one.put("iso", each.instrument().properties().iso());
      one.put("us", each.instrument().properties().us());
      ArrayNode differences = one.putArray("differences");
      for (Difference difference : each.differences()) {
        ObjectNode node = differences.addObject();
        node.put("code", difference.code());
        node.put("effect", difference.effect().id());
        node.put("text", difference.text());
      }
    }
    return array;
  }
}
