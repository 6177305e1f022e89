package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import kerfwright.catalogue.stack.UsualLayer;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.catalogue.tooth.ToothSystem;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;

/** What lies on what, and how teeth are named. */
final class LayerPuzzles {
  private static final List<Integer> TEETH = List.of(11, 14, 16, 36, 41, 44);

  private LayerPuzzles() {}

  /** The layers of a usual stack, outermost first. */
  static Puzzle<List<String>> order(Random random) {
    UsualStack stack = stack(random, 3);
    List<String> right = materials(stack);
    List<List<String>> pool = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      List<String> other = new ArrayList<>(right);
      Collections.shuffle(other, random);
      pool.add(other);
    }
    return new Puzzle<>(
        Message.of("learner.ask-order", stack.name()),
        null,
        right,
        pool,
        one -> one.equals(materials(stack)),
        one -> turned(one, right),
        one -> Message.of("learner.order", words(one)),
        Message.of("learner.why-order", stack.name(), words(right)),
        basis(stack),
        stack.sources());
  }

  /** The layer met next. */
  static Puzzle<String> below(Random random) {
    UsualStack stack = stack(random, 2);
    List<String> layers = materials(stack);
    int at = random.nextInt(layers.size() - 1);
    String right = layers.get(at + 1);
    List<String> pool = new ArrayList<>(layers);
    pool.remove(layers.get(at));
    for (int i = 0; i < 12; i++) {
      pool.addAll(materials(stack(random, 2)));
    }
    pool.removeIf(layers.get(at)::equals);
    Message above = Message.of("label.material-" + layers.get(at));
    Message is = Message.of("label.material-" + right);
    return new Puzzle<>(
        Message.of("learner.ask-below", stack.name(), above),
        null,
        right,
        pool,
        one -> materials(stack).indexOf(one) == at + 1,
        one -> layers.contains(one) ? 0 : 1,
        one -> Message.of("label.material-" + one),
        Message.of("learner.why-below", above, is),
        basis(stack),
        stack.sources());
  }

  /** A usual stack of so many different layers at least. */
  private static UsualStack stack(Random random, int least) {
    UsualStacks stacks = UsualStacks.packaged();
    List<String> restorations = List.copyOf(stacks.restorations().keySet());
    List<String> procedures = stacks.procedures();
    while (true) {
      String restoration = restorations.get(random.nextInt(restorations.size()));
      String procedure = procedures.get(random.nextInt(procedures.size()));
      Tooth tooth = new Tooth(TEETH.get(random.nextInt(TEETH.size())));
      if (!stacks.isUnknown(restoration)) {
        UsualStack stack = stacks.find(tooth, restoration, procedure, null).orElse(null);
        if (stack != null
            && stack.layers().size() >= least
            && materials(stack).stream().distinct().count() == stack.layers().size()) {
          return stack;
        }
      }
    }
  }

  private static List<String> materials(UsualStack stack) {
    return stack.layers().stream().map(UsualLayer::materialId).toList();
  }

  private static List<Message> words(List<String> materials) {
    return materials.stream().map(one -> Message.of("label.material-" + one)).toList();
  }

  private static Basis basis(UsualStack stack) {
    boolean recalled = stack.layers().stream().anyMatch(one -> one.basis() == Basis.FROM_MEMORY);
    return recalled ? Basis.FROM_MEMORY : stack.layers().get(0).basis();
  }

  /** Pairs that stand the other way round. */
  private static int turned(List<String> one, List<String> other) {
    int turned = 0;
    for (int i = 0; i < one.size(); i++) {
      for (int j = i + 1; j < one.size(); j++) {
        turned += other.indexOf(one.get(i)) > other.indexOf(one.get(j)) ? 1 : 0;
      }
    }
    return turned;
  }

  /** A tooth named in one system, asked for in another. */
  static Puzzle<String> tooth(Random random) {
    List<Tooth> teeth = ToothNotation.all();
    Tooth tooth = teeth.get(random.nextInt(teeth.size()));
    List<ToothSystem> systems = new ArrayList<>(List.of(ToothSystem.values()));
    Collections.shuffle(systems, random);
    ToothSystem from = systems.get(0);
    ToothSystem to = systems.get(1);
    String given = ToothNotation.write(tooth, from);
    String right = ToothNotation.write(tooth, to);
    return new Puzzle<>(
        Message.of("learner.ask-tooth", given, teeth(from), teeth(to)),
        null,
        right,
        teeth.stream()
            .filter(one -> one.primary() == tooth.primary())
            .map(one -> ToothNotation.write(one, to))
            .toList(),
        text -> ToothNotation.parse(text, to).equals(tooth),
        text -> apart(ToothNotation.parse(text, to), tooth),
        text -> Message.of("learner.plain", text),
        Message.of("learner.why-tooth", given, teeth(from), right, teeth(to)),
        Basis.SEEN,
        ToothNotation.SOURCES);
  }

  private static Message teeth(ToothSystem system) {
    return Message.of("label.teeth-" + system.id());
  }

  private static int apart(Tooth a, Tooth b) {
    return Math.abs(a.position() - b.position())
        + (a.upper() == b.upper() ? 0 : 2)
        + (a.right() == b.right() ? 0 : 2);
  }
}
