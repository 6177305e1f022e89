package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.BladeCountClass;
import kerfwright.catalogue.instrument.BladeCounts;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.Grits;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.silhouette.ProfilePoint;
import kerfwright.catalogue.silhouette.Silhouette;
import kerfwright.practice.teaching.Question.Picture;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Range;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/** Shapes, grits and blades. */
final class LookPuzzles {
  private static final double ALIKE_MM2 = 0.02;
  private static final int SLICES = 40;
  private static final List<Integer> BLADES = List.of(4, 6, 8, 10, 12, 16, 20, 24, 30, 40);

  /** Known by their use or their proportions rather than by an outline of this size. */
  private static final Set<ShapeFamily> NOT_BY_OUTLINE =
      EnumSet.of(
          ShapeFamily.DISC,
          ShapeFamily.DEPTH_MARKER,
          ShapeFamily.INTERDENTAL,
          ShapeFamily.SURGICAL,
          ShapeFamily.NEEDLE,
          ShapeFamily.LENS,
          ShapeFamily.CUP,
          ShapeFamily.CYLINDER_END_CUTTING,
          ShapeFamily.TAPER_SAFE_END);

  private LookPuzzles() {}

  /** Which shape is drawn; two shapes whose outlines cannot be told apart never meet. */
  static Puzzle<ShapeFamily> shape(Random random) {
    List<ShapeFamily> all =
        Stream.of(ShapeFamily.values()).filter(one -> !NOT_BY_OUTLINE.contains(one)).toList();
    ShapeFamily right = all.get(random.nextInt(all.size()));
    double head = 1 + random.nextInt(11) / 10.0;
    double length =
        Shapes.usualHeadLength(Shapes.ofFamily(right), Length.ofMillimetres(head))
            .length()
            .millimetres();
    InstrumentProperties drawn = drawn(right, head, length);
    ToDoubleFunction<ShapeFamily> off = one -> apartMm2(drawn, drawn(one, head, length));
    return new Puzzle<>(
        Message.of("learner.ask-shape"),
        new Picture.OfInstrument(drawn),
        right,
        all,
        one -> off.applyAsDouble(one) < ALIKE_MM2,
        off,
        one -> Message.of("label.shape-" + one.id()),
        Message.of("learner.why-shape", Message.of("label.shape-" + right.id())),
        Basis.PROJECT_SETTING,
        List.of());
  }

  private static InstrumentProperties drawn(ShapeFamily shape, double headMm, double lengthMm) {
    return new InstrumentProperties(
        InstrumentKind.CARBIDE,
        null,
        null,
        shape,
        shape.label(),
        null,
        8,
        false,
        Length.ofMillimetres(headMm),
        Length.ofMillimetres(shape == ShapeFamily.ROUND ? headMm : lengthMm),
        ShankType.FG,
        Length.ofMillimetres(19),
        null,
        List.of());
  }

  /** Area between two outlines, one side. */
  private static double apartMm2(InstrumentProperties a, InstrumentProperties b) {
    List<ProfilePoint> first = Silhouette.of(a).profile();
    List<ProfilePoint> second = Silhouette.of(b).profile();
    double shown = 8;
    double area = 0;
    for (int i = 0; i < SLICES; i++) {
      double z = (i + 0.5) * shown / SLICES;
      area += Math.abs(radius(first, z) - radius(second, z)) * shown / SLICES;
    }
    return area;
  }

  private static double radius(List<ProfilePoint> profile, double z) {
    for (int i = 1; i < profile.size(); i++) {
      ProfilePoint from = profile.get(i - 1);
      ProfilePoint to = profile.get(i);
      if (z >= from.zMm() && z <= to.zMm() && to.zMm() > from.zMm()) {
        double share = (z - from.zMm()) / (to.zMm() - from.zMm());
        return from.rMm() + share * (to.rMm() - from.rMm());
      }
    }
    return 0;
  }

  static Puzzle<GritClass> ring(Random random) {
    GritClass right = any(random);
    List<String> rings = coloured(right);
    String colour = rings.get(random.nextInt(rings.size()));
    return new Puzzle<>(
        Message.of("learner.ask-ring", ringWords(colour)),
        new Picture.OfRing(colour),
        right,
        Arrays.asList(GritClass.values()),
        one -> Grits.entry(one).rings().contains(colour),
        one -> Math.abs(one.ordinal() - right.ordinal()),
        one -> Message.of("label.grit-" + one.id()),
        Message.of("learner.why-ring", ringWords(colour), Message.of("label.grit-" + right.id())),
        Grits.entry(right).provenance().basis(),
        Grits.entry(right).provenance().sources());
  }

  static Puzzle<Range<Length>> grain(Random random) {
    GritClass right = any(random);
    List<Range<Length>> sizes = new ArrayList<>();
    Arrays.stream(GritClass.values()).map(GritClass::particleSize).forEach(sizes::add);
    Message grit = Message.of("label.grit-" + right.id());
    boolean byRing = random.nextBoolean();
    String colour = coloured(right).get(0);
    return new Puzzle<>(
        byRing
            ? Message.of("learner.ask-grain-ring", ringWords(colour))
            : Message.of("learner.ask-grain", grit),
        byRing ? new Picture.OfRing(colour) : null,
        right.particleSize(),
        sizes,
        one -> one.equals(right.particleSize()),
        one -> Math.abs(Math.log(one.typical().metres() / right.particleSize().typical().metres())),
        LookPuzzles::micrometres,
        Message.of("learner.why-grain", grit, micrometres(right.particleSize())),
        Grits.entry(right).provenance().basis(),
        Grits.entry(right).provenance().sources());
  }

  private static Message micrometres(Range<Length> size) {
    return Message.of(
        "learner.micrometres",
        Rounded.places(size.low().micrometres(), 0),
        Rounded.places(size.high().micrometres(), 0));
  }

  private static GritClass any(Random random) {
    return GritClass.values()[random.nextInt(GritClass.values().length)];
  }

  private static List<String> coloured(GritClass grit) {
    return Grits.entry(grit).rings().stream().filter(ring -> !ring.equals("none")).toList();
  }

  private static Message ringWords(String colour) {
    return Message.of("label.ring-" + colour.replace(' ', '-'));
  }

  /** Blades for a role, of the classes that were read somewhere. */
  static Puzzle<Integer> blades(Random random) {
    List<BladeCountClass> read =
        BladeCounts.all().stream()
            .filter(one -> one.provenance().basis() == Basis.SEEN && one.low() != null)
            .toList();
    BladeCountClass role = read.get(random.nextInt(read.size()));
    List<Integer> fit = BLADES.stream().filter(role::contains).toList();
    int right = fit.get(random.nextInt(fit.size()));
    Message says = Message.of("reference.blades-" + role.low() + "-" + role.high());
    List<SourceKey> sources = role.provenance().sources();
    return new Puzzle<>(
        Message.of("learner.ask-blades", says),
        null,
        right,
        BLADES,
        role::contains,
        one -> Math.abs(one - right),
        one -> Message.of("learner.blades", one),
        Message.of("learner.why-blades", says, right),
        role.provenance().basis(),
        sources);
  }
}
