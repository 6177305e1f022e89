package kerfwright.app.drawing.chart;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import kerfwright.app.json.JsonText;
import kerfwright.app.words.Say;

/** A chart as data for the script that draws it on the screen. */
final class ChartData {
  private ChartData() {}

  static String json(Say say, Chart chart) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("title", chart.title());
    json.put("about", chart.about());
    json.put("across", chart.across());
    json.put("upright", chart.upright());
    json.put("end", JsonText.number(chart.end()).decimalValue());
    json.put("lowest", JsonText.number(chart.lowest()).decimalValue());
    json.put("highest", JsonText.number(chart.highest()).decimalValue());
    json.put("comma", say.decimalComma());
    var lines = json.putArray("lines");
    for (Chart.Line line : chart.lines()) {
      ObjectNode one = lines.addObject();
      one.put("name", line.name());
      one.set("x", JsonText.numbers(line.x()));
      one.set("y", JsonText.numbers(line.y()));
    }
    Chart.Band band = chart.band();
    if (band != null) {
      ObjectNode one = json.putObject("band");
      one.put("name", band.name());
      one.set("low", JsonText.numbers(band.low()));
      one.set("high", JsonText.numbers(band.high()));
    }
    Chart.Level level = chart.level();
    if (level != null) {
      json.putObject("level").put("name", level.name()).set("y", JsonText.number(level.y()));
    }
    json.set("begins", JsonText.numbers(chart.begins()));
    var spots = json.putArray("spots");
    for (Chart.Spot spot : chart.spots()) {
      ObjectNode one = spots.addObject();
      one.put("name", spot.name());
      one.set("x", JsonText.number(spot.x()));
      one.set("y", JsonText.number(spot.y()));
    }
    return json.toString();
  }
}
