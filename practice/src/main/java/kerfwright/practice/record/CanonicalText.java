package kerfwright.practice.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * The one way an entry is written as text: what is stored, hashed and shown is this text. Lines of
 * name, colon, space, value, each ended by a line feed, always in this order; what is not known has
 * no line. In values a backslash is doubled and a line feed or carriage return written \n or \r.
 * Numbers are the shortest decimals that give the same binary number back.
 */
public final class CanonicalText {
  private static final String FIRST = "kerfwright cut record 1";

  private CanonicalText() {}

  public static String of(RecordEntry entry) {
    return of(entry.number(), entry.recordedAt(), entry.statement());
  }

  static String of(long number, Instant recordedAt, Statement statement) {
    StringBuilder text = new StringBuilder(512).append(FIRST).append('\n');
    line(text, "number", number);
    line(text, "id", statement.id());
    line(text, "recorded", recordedAt);
    CutUse use = statement.use();
    line(text, "case", use.caseReference());
    line(text, "tooth", use.tooth().fdi());
    PlanStep step = use.step();
    if (step != null) {
      line(text, "plan", step.plan());
      line(text, "step", step.order());
    }
    line(text, "instrument", use.instrument().id());
    line(text, "label", use.instrument().label());
    line(text, "what", use.instrument().what());
    line(text, "piece-of", use.instrument().pieceOf());
    line(text, "load", use.origin().load());
    line(text, "load-name", use.origin().loadName());
    line(text, "pouch", use.origin().pouch());
    line(text, "lot", use.origin().lot());
    CutUse.Piece handpiece = use.handpiece();
    if (handpiece != null) {
      line(text, "handpiece", handpiece.used().id());
      line(text, "handpiece-label", handpiece.used().label());
      line(text, "handpiece-what", handpiece.used().what());
      line(text, "handpiece-of", handpiece.used().pieceOf());
      line(text, "handpiece-load", handpiece.origin().load());
      line(text, "handpiece-load-name", handpiece.origin().loadName());
      line(text, "handpiece-pouch", handpiece.origin().pouch());
    }
    line(text, "set-rpm", use.cut().setSpeedRpm());
    line(text, "cut-s", use.cut().cutSeconds());
    line(text, "total-s", use.cut().totalSeconds());
    line(text, "load-n", use.cut().loadN());
    line(text, "coolant-ml-per-min", use.cut().coolantMlPerMin());
    use.cut().mm3ByMaterial().forEach((id, mm3) -> line(text, "mm3", id + " " + mm3));
    line(text, "by", use.by());
    line(text, "at", use.at());
    Correction correction = statement.correction();
    if (correction != null) {
      line(text, "corrects", correction.corrects());
      line(text, "struck", correction.struck() ? "yes" : "no");
      line(text, "corrected-by", correction.by());
      line(text, "reason", correction.reason());
    }
    for (Remark remark : statement.remarks()) {
      List<String> words = new ArrayList<>(List.of(remark.kind().id()));
      words.addAll(remark.arguments());
      line(text, "remark", String.join(" ", words));
    }
    return text.toString();
  }

  private static void line(StringBuilder text, String name, @Nullable Object value) {
    String shown = value == null ? "" : value.toString();
    if (!shown.isEmpty()) {
      String escaped = shown.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
      text.append(name).append(": ").append(escaped).append('\n');
    }
  }

  /**
   * The entry a text says.
   *
   * @throws IllegalArgumentException where the text is none of these
   */
  public static RecordEntry entry(String text, String hash) {
    Map<String, List<String>> lines = lines(text);
    Map<String, Double> mm3 = new TreeMap<>();
    for (String one : lines.getOrDefault("mm3", List.of())) {
      int space = one.indexOf(' ');
      if (space < 0) {
        throw broken("mm3 " + one);
      }
      mm3.put(one.substring(0, space), Double.valueOf(one.substring(space + 1)));
    }
    String plan = told(lines, "plan");
    CutUse use =
        new CutUse(
            one(lines, "case"),
            new Tooth(Integer.parseInt(one(lines, "tooth"))),
            plan.isEmpty() ? null : new PlanStep(plan, Integer.parseInt(one(lines, "step"))),
            new UsedInstrument(
                UUID.fromString(one(lines, "instrument")),
                one(lines, "label"),
                told(lines, "what"),
                id(lines, "piece-of")),
            handpiece(lines),
            new Origin(
                id(lines, "load"),
                told(lines, "load-name"),
                told(lines, "pouch"),
                told(lines, "lot")),
            new Cut(
                number(lines, "set-rpm"),
                number(lines, "cut-s"),
                number(lines, "total-s"),
                number(lines, "load-n"),
                number(lines, "coolant-ml-per-min"),
                mm3),
            one(lines, "by"),
            Instant.parse(one(lines, "at")));
    UUID corrects = id(lines, "corrects");
    Correction correction =
        corrects == null
            ? null
            : new Correction(
                corrects,
                one(lines, "struck").equals("yes"),
                one(lines, "corrected-by"),
                one(lines, "reason"));
    List<Remark> remarks = new ArrayList<>();
    for (String one : lines.getOrDefault("remark", List.of())) {
      List<String> words = List.of(one.split(" ", -1));
      Remark.Kind kind =
          Identified.of(Remark.Kind.class, words.get(0)).orElseThrow(() -> broken("remark " + one));
      remarks.add(new Remark(kind, words.subList(1, words.size())));
    }
    return new RecordEntry(
        Long.parseLong(one(lines, "number")),
        Instant.parse(one(lines, "recorded")),
        new Statement(UUID.fromString(one(lines, "id")), use, correction, remarks),
        hash);
  }

  private static CutUse.@Nullable Piece handpiece(Map<String, List<String>> lines) {
    UUID id = id(lines, "handpiece");
    return id == null
        ? null
        : new CutUse.Piece(
            new UsedInstrument(
                id,
                one(lines, "handpiece-label"),
                told(lines, "handpiece-what"),
                id(lines, "handpiece-of")),
            new Origin(
                id(lines, "handpiece-load"),
                told(lines, "handpiece-load-name"),
                told(lines, "handpiece-pouch"),
                ""));
  }

  private static Map<String, List<String>> lines(String text) {
    String[] all = text.split("\n");
    if (all.length == 0 || !all[0].equals(FIRST)) {
      throw broken("the first line");
    }
    Map<String, List<String>> lines = new LinkedHashMap<>();
    for (int i = 1; i < all.length; i++) {
      int colon = all[i].indexOf(": ");
      if (colon < 1) {
        throw broken("line " + (i + 1));
      }
      lines
          .computeIfAbsent(all[i].substring(0, colon), any -> new ArrayList<>())
          .add(plain(all[i].substring(colon + 2)));
    }
    return lines;
  }

  private static String plain(String escaped) {
    if (escaped.indexOf('\\') < 0) {
      return escaped;
    }
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < escaped.length(); i++) {
      char c = escaped.charAt(i);
      if (c == '\\' && i + 1 < escaped.length()) {
        char next = escaped.charAt(++i);
        plain.append(next == 'n' ? '\n' : next == 'r' ? '\r' : next);
      } else {
        plain.append(c);
      }
    }
    return plain.toString();
  }

  private static String told(Map<String, List<String>> lines, String name) {
    return lines.getOrDefault(name, List.of("")).get(0);
  }

  private static String one(Map<String, List<String>> lines, String name) {
    String value = told(lines, name);
    if (value.isEmpty()) {
      throw broken("the line " + name);
    }
    return value;
  }

  private static @Nullable UUID id(Map<String, List<String>> lines, String name) {
    String value = told(lines, name);
    return value.isEmpty() ? null : UUID.fromString(value);
  }

  private static @Nullable Double number(Map<String, List<String>> lines, String name) {
    String value = told(lines, name);
    return value.isEmpty() ? null : Double.valueOf(value);
  }

  private static IllegalArgumentException broken(String what) {
    return new IllegalArgumentException(
        "Not the text of an entry: " + what + " is not as it is written");
  }
}
