package kerfwright.practice.teaching;

import java.util.Random;
import java.util.function.Function;
import kerfwright.quantity.Identified;

/** Kinds of questions, each with what makes its puzzles. */
public enum Kind implements Identified {
  SHAPE(Topic.INSTRUMENTS, LookPuzzles::shape),
  GRIT_RING(Topic.INSTRUMENTS, LookPuzzles::ring),
  GRIT_GRAIN(Topic.INSTRUMENTS, LookPuzzles::grain),
  BLADES_ROLE(Topic.INSTRUMENTS, LookPuzzles::blades),
  SHANK_DIAMETER(Topic.INSTRUMENTS, NumberPuzzles::shankDiameter),
  READ_NUMBER(Topic.NUMBERS, NumberPuzzles::read),
  WRITE_NUMBER(Topic.NUMBERS, NumberPuzzles::write),
  SHANK_CODE(Topic.NUMBERS, NumberPuzzles::shankCode),
  US_SIZE(Topic.NUMBERS, NumberPuzzles::usSize),
  LAYER_ORDER(Topic.LAYERS, LayerPuzzles::order),
  LAYER_BELOW(Topic.LAYERS, LayerPuzzles::below),
  TOOTH(Topic.LAYERS, LayerPuzzles::tooth),
  FASTEST(Topic.CHOICE, CutPuzzles::fastest),
  DEEPEST_BITE(Topic.CHOICE, CutPuzzles::deepestBite),
  EDGE_WEAR(Topic.CHOICE, CutPuzzles::edgeWear),
  SPEED_LIMIT(Topic.HANDLING, CutPuzzles::speedLimit),
  STROKE(Topic.HANDLING, HandlingPuzzles::stroke),
  END_CUE(Topic.HANDLING, HandlingPuzzles::endCue),
  WARMEST(Topic.HEAT, CutPuzzles::warmest),
  NEXT_STEP(Topic.REPROCESSING, HandlingPuzzles::nextStep),
  STEP_TIME(Topic.REPROCESSING, HandlingPuzzles::stepTime);

  private final Topic topic;
  private final Function<Random, Puzzle<?>> maker;

  Kind(Topic topic, Function<Random, Puzzle<?>> maker) {
    this.topic = topic;
    this.maker = maker;
  }

  public Topic topic() {
    return topic;
  }

  Puzzle.Posed pose(Level level, Random random) {
    return maker.apply(random).pose(this, level, random);
  }
}
