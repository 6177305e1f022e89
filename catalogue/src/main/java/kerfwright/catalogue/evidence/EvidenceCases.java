package kerfwright.catalogue.evidence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import org.jspecify.annotations.Nullable;

/** What of the published findings the models are asked to reproduce, and why the rest is not. */
public final class EvidenceCases {
  private static final EvidenceCases PACKAGED = Topic.sound(EvidenceCases::read);

  private final List<EvidenceCase> cases;
  private final Map<String, String> notComputed;

  private EvidenceCases(List<EvidenceCase> cases, Map<String, String> notComputed) {
    this.cases = List.copyOf(cases);
    this.notComputed = notComputed;
  }

  /** The cases packaged with the catalogue. */
  public static EvidenceCases packaged() {
    return PACKAGED;
  }

  private static EvidenceCases read(Faults faults) {
    Evidence evidence = Evidence.packaged();
    Map<String, SetUp> setUps = SetUps.read(faults);
    List<EvidenceCase> cases =
        Topic.read("evidence/cases.csv", faults, row -> read(row, evidence, setUps));
    Set<String> used = cases.stream().map(one -> one.row().id()).collect(Collectors.toSet());
    Map<String, String> notComputed = new LinkedHashMap<>();
    Topic.read(
        "evidence/not-computed.csv",
        faults,
        row -> {
          String id = row.required("row");
          if (evidence.find(id).isEmpty()) {
            row.fault("row", "'" + id + "' is no published finding");
          } else if (!used.add(id)) {
            row.fault("row", "'" + id + "' is computed, or stands twice");
          }
          notComputed.put(id, row.required("reason"));
          return id;
        });
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

  private static @Nullable EvidenceCase read(
      DataRow row, Evidence evidence, Map<String, SetUp> setUps) {
    EvidenceRow finding = evidence.find(row.text("row")).orElse(null);
    if (finding == null) {
      row.expected("row", "a published finding");
    }
    EvidenceCase.Comparison comparison =
        row.requiredOneOf("comparison", EvidenceCase.Comparison.class);
    SetUp first = setUps.get(row.text("first"));
    SetUp second = setUps.get(row.text("second"));
    if (first == null) {
      row.expected("first", "a set-up");
    }
    if (comparison.needsTwo() != (second != null)) {
      row.fault("second", "a set-up is needed for ratio, greater, less and same only");
    }
    Numbers own = row.numbers();
    boolean typed = own.low() != null || own.typical() != null || own.high() != null;
    String unit = row.text("unit");
    if (typed && (unit.isEmpty() || row.text("remark").isEmpty())) {
      row.fault("unit", "a figure that differs from the finding needs a unit and a remark");
    }
    if (finding == null || first == null) {
      return null;
    }
    EvidenceCase one =
        new EvidenceCase(
            row.text("id"),
            finding,
            row.requiredOneOf("figure", EvidenceCase.Figure.class),
            comparison,
            row.required("statement"),
            first,
            second,
            typed ? own : finding.numbers(),
            unit.isEmpty() ? finding.unit() : unit,
            row.text("remark"),
            row.text("explanation"));
    if (comparison.needsFigure() && Double.isNaN(one.publishedMiddle())) {
      row.fault("typical", "the comparison needs a published figure");
    }
    return one;
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
}
