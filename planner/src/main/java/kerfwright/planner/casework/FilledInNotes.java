package kerfwright.planner.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;

/** Says what a case left open and which usual value stands in, one note each with its source. */
public final class FilledInNotes {
  private FilledInNotes() {}

  /** Notes on everything but the layers, which are told with their own sources. */
  public static List<Finding> of(CutCase c) {
    List<Finding> notes = new ArrayList<>();
    for (FilledIn one : c.filledIn()) {
      if (one.field().equals("layers")) {
        continue;
      }
      // what could as well be something else is worth a second look
      boolean guessed = one.field().equals("restoration") || one.field().equals("intended");
      notes.add(
          new Finding(
              guessed ? Finding.Severity.WARN : Finding.Severity.NOTE,
              "filled-in",
              message(c, one.field()),
              one.sources()));
    }
    return notes;
  }

  private static Message message(CutCase c, String field) {
    return switch (field) {
      case "case" -> Message.of("finding.filled-in-case", c.reference());
      case "pulp" ->
          Message.of("finding.filled-in-pulp", Message.of("label.pulp-" + c.pulp().id()));
      case "restoration" ->
          Message.of(
              "finding.filled-in-restoration", Message.of("label.restoration-" + c.restoration()));
      case "intended" ->
          Message.of("finding.filled-in-intended", Message.of("label.intended-" + c.intended()));
      case "lesion" ->
          Message.of(
              "finding.filled-in-lesion",
              Message.of("case.lesion-" + Objects.requireNonNull(c.lesion()).depth().id()));
      case "chamber" -> chamber(Objects.requireNonNull(c.condition().chamber()));
      case "outline" ->
          Message.of(
              "finding.filled-in-outline",
              Message.of("label.outline-" + c.outline().shape().id()),
              Rounded.places(c.outline().length().millimetres(), 1),
              Rounded.places(c.outline().width().millimetres(), 1));
      case "handpieces" ->
          Message.of(
              "finding.filled-in-handpieces",
              c.handpieces().stream()
                  .map(Handpiece::id)
                  .map(id -> Message.of("label.handpiece-" + id))
                  .toList());
      case "coolant_ml_per_min" ->
          Message.of("finding.filled-in-water", Rounded.figure(c.coolant().millilitresPerMinute()));
      default -> throw new IllegalArgumentException("No words for " + field);
    };
  }

  private static Message chamber(ChamberDepth chamber) {
    return Message.of(
        "finding.filled-in-chamber",
        Rounded.places(chamber.below().typical().millimetres(), 1),
        Rounded.places(chamber.below().low().millimetres(), 1),
        Rounded.places(chamber.below().high().millimetres(), 1));
  }
}
