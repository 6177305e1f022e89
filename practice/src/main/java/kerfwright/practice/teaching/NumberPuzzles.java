package kerfwright.practice.teaching;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.Grits;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.NominalSize;
import kerfwright.catalogue.instrument.NominalSizes;
import kerfwright.catalogue.instrument.Shank;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.number.IsoNumber;
import kerfwright.catalogue.number.NumberExplanation;
import kerfwright.catalogue.number.UsSize;
import kerfwright.catalogue.number.UsSizes;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/** The open number, shanks and sizes. */
final class NumberPuzzles {
  private static final String DIAMOND = "806";
  private static final double EXACT_MM = 0.004;
  private static final int POOL = 16;

  private NumberPuzzles() {}

  /** The number is given, what it names is asked. */
  static Puzzle<IsoNumber> read(Random random) {
    return number(random, true);
  }

  /** What it names is given, the number is asked. */
  static Puzzle<IsoNumber> write(Random random) {
    return number(random, false);
  }

  private static Puzzle<IsoNumber> number(Random random, boolean read) {
    IsoNumber right = any(random);
    List<IsoNumber> pool = new ArrayList<>();
    for (int i = 0; i < POOL; i++) {
      pool.add(differing(right, random));
    }
    List<Object> meaning = meaning(right);
    Message named = named(right);
    Map<IsoNumber, Integer> off = new HashMap<>();
    pool.forEach(one -> off.put(one, differences(meaning(one), meaning)));
    InstrumentShape shape = Shapes.byCode(right.shape()).orElseThrow();
    return new Puzzle<>(
        read
            ? Message.of("learner.ask-read", right.encode())
            : Message.of("learner.ask-write", named),
        null,
        right,
        pool,
        one -> meaning(one).equals(meaning),
        one -> off.getOrDefault(one, 0),
        one -> read ? named(one) : Message.of("learner.plain", one.encode()),
        Message.of("learner.why-number", right.encode(), named),
        shape.provenance().basis(),
        shape.provenance().sources());
  }

  private static IsoNumber any(Random random) {
    return IsoNumber.of(DIAMOND, shank(random), shape(random), grit(random), size(random));
  }

  private static String shank(Random random) {
    return List.of("314", "204", "104").get(random.nextInt(3));
  }

  private static String shape(Random random) {
    List<InstrumentShape> shapes = Shapes.all().stream().filter(one -> !one.rootCanal()).toList();
    return shapes.get(random.nextInt(shapes.size())).code();
  }

  private static String grit(Random random) {
    return GritClass.values()[random.nextInt(GritClass.values().length)].isoCode();
  }

  private static String size(Random random) {
    List<NominalSize> sizes =
        NominalSizes.all().stream().filter(one -> one.diameter().millimetres() < 3).toList();
    return sizes.get(random.nextInt(sizes.size())).code();
  }

  /** The same number with one to four of its groups drawn anew. */
  private static IsoNumber differing(IsoNumber from, Random random) {
    int groups = 1 + random.nextInt(15);
    return IsoNumber.of(
        DIAMOND,
        (groups & 1) != 0 ? shank(random) : String.valueOf(from.shank()),
        (groups & 2) != 0 ? shape(random) : from.shape(),
        (groups & 4) != 0 ? grit(random) : from.characteristic(),
        (groups & 8) != 0 ? size(random) : from.size());
  }

  /** What the codec reads: shank, name of the shape, characteristic, size. */
  private static List<Object> meaning(IsoNumber number) {
    NumberExplanation says = number.explain();
    Shank shank = says.shank();
    InstrumentShape shape = says.shape();
    Length size = says.size().length();
    return List.of(
        shank == null ? "" : shank.code(),
        shape == null ? "" : shape.name(),
        number.characteristic(),
        size == null ? 0 : size.millimetres());
  }

  private static int differences(List<Object> one, List<Object> other) {
    return (int)
        IntStream.range(0, one.size()).filter(i -> !one.get(i).equals(other.get(i))).count();
  }

  private static Message named(IsoNumber number) {
    NumberExplanation says = number.explain();
    GritClass grit = Grits.byCode(number.characteristic()).orElseThrow();
    Shank shank = Objects.requireNonNull(says.shank());
    Length size = Objects.requireNonNull(says.size().length());
    return Message.of(
        "learner.named",
        Message.of("label.shape-" + number.shape()),
        Message.of("label.grit-" + grit.id()),
        Rounded.places(size.millimetres(), 1),
        shankWords(Objects.requireNonNull(shank.type())));
  }

  private static Message shankWords(ShankType type) {
    return Message.of("label.shank-" + type.id());
  }

  /** Which shank a group of three digits names. */
  static Puzzle<String> shankCode(Random random) {
    List<Shank> known =
        Shanks.all().stream()
            .filter(one -> !one.familyOnly() && one.type() != null && one.overallLength() != null)
            .toList();
    Shank right = known.get(random.nextInt(known.size()));
    Length length = Objects.requireNonNull(right.overallLength());
    ShankType type = Objects.requireNonNull(right.type());
    Message what =
        Message.of("learner.shank-long", shankWords(type), Rounded.places(length.millimetres(), 1));
    Basis lengthBasis = right.lengthBasis();
    return new Puzzle<>(
        Message.of("learner.ask-shank-code", what),
        null,
        right.code(),
        known.stream().map(Shank::code).toList(),
        code -> Shanks.byCode(code).filter(right::equals).isPresent(),
        code -> code.charAt(0) == right.code().charAt(0) ? 0 : 1,
        code -> Message.of("learner.plain", code),
        Message.of("learner.why-shank-code", right.code(), what),
        lengthBasis == Basis.FROM_MEMORY ? lengthBasis : right.provenance().basis(),
        right.provenance().sources());
  }

  /** How thick a shank is; the wrong figures are no shank's. */
  static Puzzle<Integer> shankDiameter(Random random) {
    ShankType type = ShankType.values()[random.nextInt(ShankType.values().length)];
    int right = hundredths(type.diameter());
    List<Integer> pool = new ArrayList<>(List.of(160, 235));
    for (int i = 0; i < 12; i++) {
      pool.add(110 + 5 * random.nextInt(45));
    }
    Shank standard = Shanks.standard(type);
    return new Puzzle<>(
        Message.of("learner.ask-shank", shankWords(type)),
        null,
        right,
        pool,
        one -> one == hundredths(type.diameter()),
        one -> Math.abs(one - right),
        NumberPuzzles::millimetres,
        Message.of("learner.why-shank", shankWords(type), millimetres(right)),
        standard.provenance().basis(),
        standard.provenance().sources());
  }

  /** How wide a bur of a US number is. */
  static Puzzle<Integer> usSize(Random random) {
    List<UsSize> all = UsSizes.all();
    UsSize asked = all.get(random.nextInt(all.size()));
    int right = hundredths(asked.headDiameter());
    List<SourceKey> sources = asked.provenance().sources();
    return new Puzzle<>(
        Message.of("learner.ask-us", asked.number()),
        null,
        right,
        all.stream().map(one -> hundredths(one.headDiameter())).distinct().toList(),
        one ->
            Math.abs(
                    one / 100.0
                        - UsSizes.find(asked.number()).orElseThrow().headDiameter().millimetres())
                < EXACT_MM,
        one -> Math.abs(one - right),
        NumberPuzzles::millimetres,
        Message.of(
            "learner.why-us",
            asked.number(),
            Message.of("label.shape-" + asked.family().id()),
            millimetres(right)),
        asked.provenance().basis(),
        sources);
  }

  private static int hundredths(Length length) {
    return (int) Math.round(length.millimetres() * 100);
  }

  private static Message millimetres(int hundredths) {
    return Message.of("learner.millimetres", Rounded.places(hundredths / 100.0, 2));
  }
}
