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
import kerfwright.quantity.Message;

/** The answer in words for the command line, and as JSON (alike/1). */
public final class AlikeText {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);

  private AlikeText() {}

  public static String text(Say say, AlikeAnswer answer, List<Message> assumed) {
    StringBuilder text = new StringBuilder(say.at("reference.wanted")).append(": ");
    text.append(Words.instrument(say, answer.wanted())).append('\n');
    assumed.forEach(
        each -> text.append("  ").append(say.at("command.alike-taken", say.of(each))).append('\n'));
    text.append(answer.how(say)).append(' ').append(say.at("command.alike-same")).append('\n');
    list(say, text, say.at("reference.in-drawer"), answer.drawer());
    list(say, text, say.at("command.alike-catalogue"), answer.catalogue());
    return text.toString();
  }

  private static void list(Say say, StringBuilder text, String title, List<Neighbour> neighbours) {
    text.append('\n').append(title).append('\n');
    if (neighbours.isEmpty()) {
      text.append("  ").append(say.at("command.none-found")).append('\n');
    }
    for (Neighbour each : neighbours) {
      text.append(
          String.format(
              Locale.ROOT,
              "  %3.0f  %s: %s%s\n",
              each.score(),
              each.instrument().id(),
              Words.instrument(say, each.instrument().properties()),
              number(each)));
      if (each.differences().isEmpty()) {
        text.append("       ").append(say.at("reference.no-difference")).append('\n');
      }
      for (Difference difference : each.differences()) {
        boolean stops = difference.effect() == Difference.Effect.STOPS;
        text.append(stops ? "     ! " : "       ");
        text.append(say.of(difference.remark().message())).append('\n');
      }
    }
  }

  private static String number(Neighbour each) {
    String number = Words.number(each.instrument().properties());
    return number.isEmpty() ? "" : " [" + number + "]";
  }

  public static ObjectNode json(AlikeAnswer answer, List<Message> assumed) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "alike/1");
    json.put("wanted", Words.instrument(answer.wanted()));
    ArrayNode taken = json.putArray("assumed");
    assumed.forEach(each -> taken.add(ENGLISH.of(each)));
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
        node.put("text", ENGLISH.of(difference.remark().message()));
      }
    }
    return array;
  }
}
