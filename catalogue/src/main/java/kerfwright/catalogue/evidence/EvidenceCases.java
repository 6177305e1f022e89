package kerfwright.catalogue.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import org.jspecify.annotations.Nullable;

/** What of the published findings the models are asked to reproduce, and why the rest is not. */
public final class EvidenceCases {
  private static final List<String> HEADER =
      List.of(
          "id",
          "row",
          "figure",
          "comparison",
          "statement",
          "first",
          "second",
          "low",
          "typical",
          "high",
          "unit",
          "remark",
          "explanation");
  private static final List<String> REASONS = List.of("row", "reason");
  private static final List<String> FIGURES =
      Arrays.stream(EvidenceCase.Figure.values()).map(EvidenceCase.Figure::id).toList();
  private static final List<String> COMPARISONS =
      Arrays.stream(EvidenceCase.Comparison.values()).map(EvidenceCase.Comparison::id).toList();

  private final List<EvidenceCase> cases;
  private final Map<String, String> notComputed;

  private EvidenceCases(List<EvidenceCase> cases, Map<String, String> notComputed) {
    this.cases = List.copyOf(cases);
    this.notComputed = notComputed;
  }

  /** The cases packaged with the catalogue. */
  public static EvidenceCases packaged() {
    return Packaged.CASES;
  }

  public static EvidenceCases load(Evidence evidence, Materials materials, Faults faults) {
    SetUps setUps = SetUps.load(materials, faults);
    List<EvidenceCase> cases = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    Set<String> used = new HashSet<>();
    for (Row row : Table.read("evidence/cases.csv", HEADER, faults)) {
      EvidenceCase one = read(row, row.uniqueId("id", seen), evidence, setUps);
      if (one != null) {
        cases.add(one);
        used.add(one.row().id());
      }
    }
    Map<String, String> notComputed = new LinkedHashMap<>();
    for (Row row : Table.read("evidence/not-computed.csv", REASONS, faults)) {
      String id = row.required("row");
      if (evidence.find(id).isEmpty()) {
        row.fault("row", "'" + id + "' is no published finding");
      } else if (!used.add(id)) {
        row.fault("row", "'" + id + "' is computed, or stands twice");
      }
      notComputed.put(id, row.required("reason"));
    }
    evidence.all().stream()
        .filter(r -> !used.contains(r.id()))
        .forEach(
            r ->
                faults.add(
                    "evidence/not-computed.csv",
                    0,
                    "row",
                    "'" + r.id() + "' has neither a case nor a reason why it is not computed"));
    return new EvidenceCases(cases, notComputed);
  }

  private static @Nullable EvidenceCase read(Row row, String id, Evidence evidence, SetUps setUps) {
    EvidenceRow finding = evidence.find(row.text("row")).orElse(null);
    if (finding == null) {
      row.fault("row", "'" + row.text("row") + "' is no published finding");
    }
    String figure = row.oneOf("figure", FIGURES);
    String word = row.oneOf("comparison", COMPARISONS);
    String statement = row.required("statement");
    SetUp first = setUps.find(row.text("first")).orElse(null);
    SetUp second = setUps.find(row.text("second")).orElse(null);
    if (first == null) {
      row.fault("first", "'" + row.text("first") + "' is no set-up");
    }
    Numbers own = row.numbers();
    if (!row.sound() || finding == null || first == null) {
      return null;
    }
    EvidenceCase.Comparison comparison =
        EvidenceCase.Comparison.values()[COMPARISONS.indexOf(word)];
    if (comparison.needsTwo() != (second != null)) {
      row.fault("second", "a set-up is needed for ratio, greater, less and same only");
    }
    boolean typed = own.low() != null || own.typical() != null || own.high() != null;
    if (typed && (row.text("unit").isEmpty() || row.text("remark").isEmpty())) {
      row.fault("unit", "a figure that differs from the finding needs a unit and a remark");
    }
    EvidenceCase one =
        new EvidenceCase(
            id,
            finding,
            EvidenceCase.Figure.values()[FIGURES.indexOf(figure)],
            comparison,
            statement,
            first,
            second,
            typed ? own : finding.numbers(),
            row.text("unit").isEmpty() ? finding.unit() : row.text("unit"),
            row.text("remark"),
            row.text("explanation"));
    if (comparison.needsFigure() && Double.isNaN(one.publishedMiddle())) {
      row.fault("typical", "the comparison needs a published figure");
    }
    return row.sound() ? one : null;
  }

  /** Every case, in the order of the file. */
  public List<EvidenceCase> all() {
    return cases;
  }

  /** Cases of one finding; empty where it is not computed. */
  public List<EvidenceCase> of(EvidenceRow row) {
    return cases.stream().filter(c -> c.row().id().equals(row.id())).toList();
  }

  /** Why a finding is not computed, by its id. */
  public Map<String, String> notComputed() {
    return notComputed;
  }

  private static final class Packaged {
    static final EvidenceCases CASES = read();

    private static EvidenceCases read() {
      Faults faults = new Faults();
      EvidenceCases cases = load(Evidence.packaged(), Materials.packaged(), faults);
      faults.throwIfAny();
      return cases;
    }
  }
}
