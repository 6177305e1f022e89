package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import kerfwright.catalogue.operation.Operation;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.reprocessing.ReprocessingFigure;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;
import kerfwright.catalogue.table.Numbers;
import kerfwright.planner.explain.OperationWords;
import kerfwright.planner.plan.Stroke;
import kerfwright.practice.reprocessing.ProcessingStep;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/** Strokes, end cues and reprocessing. */
final class HandlingPuzzles {
  private HandlingPuzzles() {}

  private static List<Operation> operations() {
    OperationTable table = OperationTable.packaged();
    return table.variants().stream()
        .flatMap(variant -> table.operations(variant).stream())
        .filter(one -> one.cuts() && one.says().isEmpty())
        .toList();
  }

  /** How an operation is led, where its row tells. */
  static Puzzle<Stroke> stroke(Random random) {
    List<Operation> told =
        operations().stream().filter(one -> !one.operating().stroke().isEmpty()).toList();
    Operation asked = told.get(random.nextInt(told.size()));
    Stroke right = Identified.of(Stroke.class, asked.operating().stroke()).orElseThrow();
    Message name = OperationWords.name(asked);
    return new Puzzle<>(
        Message.of("learner.ask-stroke", name, within(asked)),
        null,
        right,
        List.of(Stroke.values()),
        one -> one.id().equals(asked.operating().stroke()),
        one -> Math.abs(one.ordinal() - right.ordinal()),
        HandlingPuzzles::words,
        Message.of("learner.why-stroke", name, words(right)),
        asked.provenance().basis(),
        asked.provenance().sources());
  }

  private static Message words(Stroke stroke) {
    return Message.of("label.stroke-" + stroke.id());
  }

  /** The procedure it belongs to. */
  private static Message within(Operation operation) {
    String procedure = OperationTable.packaged().procedureOf(operation.variant());
    return Message.of("label.procedure-" + procedure);
  }

  /** When to stop: the cues of other operations are wrong unless they say the same. */
  static Puzzle<Message> endCue(Random random) {
    List<Operation> all = operations();
    Operation asked = all.get(random.nextInt(all.size()));
    Message name = OperationWords.name(asked);
    List<Message> same =
        all.stream()
            .filter(one -> one.id().equals(asked.id()))
            .map(one -> OperationWords.end(one, List.of()))
            .toList();
    Message right = OperationWords.end(asked, List.of());
    return new Puzzle<>(
        Message.of("learner.ask-cue", name, within(asked)),
        null,
        right,
        all.stream().map(one -> OperationWords.end(one, List.of())).toList(),
        same::contains,
        cue -> cue.key().startsWith("operation." + asked.variant() + ".") ? 0 : 1,
        cue -> cue,
        Message.of("learner.why-cue", name, right),
        asked.provenance().basis(),
        asked.provenance().sources());
  }

  /** The washer does what soak and ultrasonic bath do, so it has no one place. */
  private static final List<ProcessingStep> STEPS =
      Stream.of(ProcessingStep.values()).filter(one -> one != ProcessingStep.WASHER).toList();

  static Puzzle<ProcessingStep> nextStep(Random random) {
    boolean next = random.nextBoolean();
    int at = next ? random.nextInt(STEPS.size() - 1) : 1 + random.nextInt(STEPS.size() - 1);
    int wanted = next ? at + 1 : at - 1;
    List<ProcessingStep> pool = new ArrayList<>(STEPS);
    pool.remove(at);
    return new Puzzle<>(
        Message.of(next ? "learner.ask-next" : "learner.ask-before", step(STEPS.get(at))),
        null,
        STEPS.get(wanted),
        pool,
        one -> STEPS.indexOf(one) == wanted,
        one -> Math.abs(STEPS.indexOf(one) - wanted),
        HandlingPuzzles::step,
        Message.of("learner.why-next", STEPS.stream().map(HandlingPuzzles::step).toList()),
        Basis.COMMON_PRACTICE,
        List.of(SourceKey.COMMON_PRACTICE));
  }

  private static Message step(ProcessingStep step) {
    return Message.of(
        step == ProcessingStep.CYCLE ? "learner.step-cycle" : "reprocessing.step-" + step.id());
  }

  /** How long a step or an exposure takes; other figures hold where they are the same. */
  static Puzzle<Numbers> stepTime(Random random) {
    List<ReprocessingFigure> known =
        Stream.of("step-minutes", "exposure")
            .flatMap(quantity -> ReprocessingFigures.packaged().of(quantity).stream())
            .filter(one -> one.basis() != Basis.FROM_MEMORY)
            .toList();
    ReprocessingFigure asked = known.get(random.nextInt(known.size()));
    Message what = Message.of("learner.item-" + asked.id());
    return new Puzzle<>(
        Message.of("learner.ask-time", what),
        null,
        asked.numbers(),
        known.stream().map(ReprocessingFigure::numbers).toList(),
        one -> one.equals(asked.numbers()),
        one -> Math.abs(Math.log(middle(one) / middle(asked.numbers()))),
        HandlingPuzzles::minutes,
        Message.of("learner.why-time", what, minutes(asked.numbers())),
        asked.basis(),
        asked.sources());
  }

  private static double middle(Numbers numbers) {
    Double typical = numbers.typical();
    Double low = numbers.low();
    Double high = numbers.high();
    return typical != null ? typical : low != null && high != null ? (low + high) / 2 : 1;
  }

  private static Message minutes(Numbers numbers) {
    Double typical = numbers.typical();
    Double low = numbers.low();
    Double high = numbers.high();
    return typical != null || low == null || high == null
        ? Message.of("learner.minutes", Rounded.places(middle(numbers), 0))
        : Message.of("learner.minutes-to", Rounded.places(low, 0), Rounded.places(high, 0));
  }
}
