package kerfwright.app.evidence;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.catalogue.source.Sources;
import kerfwright.planner.evidence.Compared;
import kerfwright.planner.evidence.EvidenceReport;
import kerfwright.quantity.SourceKey;

/** The comparison as text for people. */
public final class EvidenceText {
  private EvidenceText() {}

  public static String of(Say say, EvidenceReport report) {
    StringBuilder text = new StringBuilder();
    for (EvidenceRow row : Evidence.packaged().all()) {
      text.append(row.id()).append("  [").append(row.role().id()).append("; ");
      text.append(row.sources().stream().map(SourceKey::key).collect(Collectors.joining(", ")));
      text.append("; ").append(Labels.basis(say, row.basis())).append("]\n");
      text.append("  ").append(row.sentence()).append('\n');
      List<Compared> compared = report.of(row);
      if (compared.isEmpty()) {
        text.append("  ")
            .append(
                say.at("evidence.not-computed", report.notComputed().getOrDefault(row.id(), "")))
            .append('\n');
      }
      compared.forEach(c -> append(say, text, c));
      text.append('\n');
    }
    EvidenceWords.closing(say, report).forEach(s -> text.append(s).append('\n'));
    text.append("\n" + say.at("reference.place-sources") + "\n");
    citations().forEach((k, v) -> text.append("  [").append(k).append("] ").append(v).append('\n'));
    return text.toString();
  }

  private static void append(Say say, StringBuilder text, Compared c) {
    text.append("  ").append(c.asked().id()).append(": ").append(c.asked().statement());
    text.append('\n');
    line(text, say.at("evidence.published"), EvidenceWords.published(say, c.asked()));
    line(text, "", c.asked().remark());
    line(
        text,
        say.at("evidence.computed"),
        EvidenceWords.computed(say, c) + ": " + EvidenceWords.verdict(say, c));
    setUp(say, text, c.asked().first());
    SetUp second = c.asked().second();
    if (second != null) {
      setUp(say, text, second);
    }
    if (!c.verdict().met()) {
      line(text, say.at("evidence.why"), c.asked().explanation());
    }
  }

  private static void setUp(Say say, StringBuilder text, SetUp setUp) {
    line(text, say.at("evidence.set-up"), setUp.label());
    line(text, "  " + say.at("evidence.told"), EvidenceWords.conditions(say, setUp, true));
    line(text, "  " + say.at("evidence.assumed"), EvidenceWords.conditions(say, setUp, false));
  }

  private static void line(StringBuilder text, String name, String words) {
    if (!words.isBlank()) {
      text.append("    ").append(name).append(name.isBlank() ? "" : " ").append(words);
      text.append('\n');
    }
  }

  private static TreeMap<String, String> citations() {
    TreeMap<String, String> citations = new TreeMap<>();
    for (EvidenceRow row : Evidence.packaged().all()) {
      for (SourceKey key : row.sources()) {
        Sources.packaged().find(key).ifPresent(s -> citations.put(key.key(), s.citation()));
      }
    }
    return citations;
  }
}
