package kerfwright.catalogue.evidence;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;

/** The set-ups of published tests; one may resemble an earlier one and say what differs. */
final class SetUps {
  private static final List<String> HEADER =
      List.of("id", "like", "label", "tool", "work", "cover", "handpiece");
  private static final List<String> CONDITIONS =
      List.of("set_up", "condition", "low", "typical", "high", "unit", "basis", "note");
  private static final List<String> TOOLS =
      Arrays.stream(SetUp.Tool.values()).map(t -> t.id()).toList();
  private static final List<String> KINDS =
      Arrays.stream(ConditionKind.values()).map(ConditionKind::id).toList();

  private final Map<String, SetUp> byId;

  private SetUps(Map<String, SetUp> byId) {
    this.byId = byId;
  }

  Optional<SetUp> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  static SetUps load(Materials materials, Faults faults) {
    List<Row> rows = Table.read("evidence/setups.csv", HEADER, faults);
    List<String> ids = rows.stream().map(row -> row.text("id")).toList();
    Map<String, Map<ConditionKind, Condition>> own = conditions(ids, faults);
    Map<String, SetUp> byId = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (Row row : rows) {
      String id = row.uniqueId("id", seen);
      SetUp like = byId.get(row.text("like"));
      if (like == null && !row.text("like").isEmpty()) {
        row.fault("like", "'" + row.text("like") + "' is no earlier set-up");
      }
      String tool = text(row, "tool", like == null ? "" : word(like.tool()));
      if (!TOOLS.contains(tool)) {
        row.fault("tool", "must be one of " + String.join(", ", TOOLS));
      }
      String work = material(row, "work", like == null ? "" : like.work(), materials);
      String cover = material(row, "cover", like == null ? "" : like.cover(), materials);
      String handpiece = text(row, "handpiece", like == null ? "" : like.handpiece());
      if (!handpiece.isEmpty()
          && !handpiece.equals("none")
          && !Handpieces.ids().contains(handpiece)) {
        row.fault("handpiece", "'" + handpiece + "' is no handpiece of the catalogue");
      }
      if (row.sound()) {
        Map<ConditionKind, Condition> all = new EnumMap<>(ConditionKind.class);
        if (like != null) {
          all.putAll(like.conditions());
        }
        all.putAll(Objects.requireNonNullElse(own.get(id), Map.of()));
        byId.put(
            id,
            new SetUp(
                id,
                text(row, "label", like == null ? "" : like.label()),
                SetUp.Tool.values()[TOOLS.indexOf(tool)],
                work,
                cover,
                handpiece.equals("none") ? "" : handpiece,
                all));
      }
    }
    return new SetUps(byId);
  }

  private static String word(SetUp.Tool tool) {
    return tool.id();
  }

  private static String text(Row row, String column, String inherited) {
    return row.text(column).isEmpty() ? inherited : row.text(column);
  }

  private static String material(Row row, String column, String inherited, Materials materials) {
    String id = text(row, column, inherited);
    if (!id.isEmpty() && materials.find(id).isEmpty()) {
      row.fault(column, "'" + id + "' is no material of the catalogue");
    }
    return id;
  }

  private static Map<String, Map<ConditionKind, Condition>> conditions(
      List<String> ids, Faults faults) {
    Map<String, Map<ConditionKind, Condition>> all = new LinkedHashMap<>();
    for (Row row : Table.read("evidence/conditions.csv", CONDITIONS, faults)) {
      String setUp = row.oneOf("set_up", ids);
      String name = row.oneOf("condition", KINDS);
      Numbers numbers = row.numbers();
      Basis basis = row.basis();
      if (!numbers.complete()) {
        row.fault("low", "low, typical and high must all be given");
      }
      if (basis == Basis.PROJECT_SETTING && row.text("note").isEmpty()) {
        row.fault("note", "an assumed condition must say why");
      }
      if (row.sound()) {
        ConditionKind kind = ConditionKind.values()[KINDS.indexOf(name)];
        if (!row.text("unit").equals(kind.unit())) {
          row.fault("unit", "'" + row.text("unit") + "' must be " + kind.unit());
        }
        Condition condition =
            new Condition(
                kind,
                Objects.requireNonNull(numbers.low()),
                Objects.requireNonNull(numbers.typical()),
                Objects.requireNonNull(numbers.high()),
                basis,
                row.text("note"));
        Map<ConditionKind, Condition> own =
            all.computeIfAbsent(setUp, s -> new EnumMap<>(ConditionKind.class));
        if (own.put(kind, condition) != null) {
          row.fault("condition", "'" + name + "' stands twice for '" + setUp + "'");
        }
      }
    }
    return all;
  }
}
