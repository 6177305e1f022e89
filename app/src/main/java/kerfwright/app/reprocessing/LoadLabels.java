package kerfwright.app.reprocessing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import kerfwright.app.label.Label;
import kerfwright.app.words.Say;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.Loads;
import kerfwright.practice.reprocessing.Pouch;

/**
 * Labels of pouches and loads. A pouch's label tells what a pouch must tell: load, contents, day
 * and last day.
 */
public record LoadLabels(Loads loads) {

  /** The label of a pouch. */
  public Optional<Label> pouch(UUID id, Say say) {
    return loads
        .holding(id)
        .flatMap(
            load ->
                load.pouches().stream()
                    .filter(pouch -> pouch.id().equals(id))
                    .findFirst()
                    .map(pouch -> label(load, pouch, say)));
  }

  private static Label label(Load load, Pouch pouch, Say say) {
    LocalDate last = pouch.lastDay();
    List<String> lines = new ArrayList<>();
    lines.add(pouch.set());
    lines.add(pouch.contents().stream().map(Pouch.Content::label).collect(Collectors.joining(" ")));
    lines.add(say.moment(load.started()) + " " + load.events().get(0).by());
    lines.add(
        last == null
            ? say.at("reprocessing.label-by-event")
            : say.at("reprocessing.label-until", say.day(last)));
    return new Label(new OwnCode(OwnCode.Kind.POUCH, pouch.id()).text(), pouch.code(), lines);
  }

  /** The label of a load. */
  public Optional<Label> load(UUID id, Say say) {
    return loads
        .find(id)
        .map(
            load ->
                new Label(
                    new OwnCode(OwnCode.Kind.LOAD, id).text(),
                    load.name(),
                    List.of(
                        ReprocessingWords.cycle(say, load.cycle()), say.moment(load.started()))));
  }
}
