package kerfwright.catalogue.evidence;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.Basis;
import org.jspecify.annotations.Nullable;

/** The set-ups of published tests; one may resemble an earlier one and say what differs. */
final class SetUps {
  private SetUps() {}

  static Map<String, SetUp> read(Faults faults) {
    Map<String, Map<ConditionKind, Condition>> own = new HashMap<>();
    Topic.read("evidence/conditions.csv", faults, row -> condition(row, own));
    Map<String, SetUp> byId = new LinkedHashMap<>();
    Topic.read("evidence/setups.csv", faults, row -> setUp(row, byId, own));
    own.keySet().stream()
        .filter(id -> !byId.containsKey(id))
        .forEach(id -> faults.add("evidence/conditions.csv", 0, "set_up", "no set-up " + id));
    return byId;
  }

  private static SetUp setUp(
      DataRow row, Map<String, SetUp> byId, Map<String, Map<ConditionKind, Condition>> own) {
    String id = row.text("id");
    SetUp like = byId.get(row.text("like"));
    if (like == null && !row.text("like").isEmpty()) {
      row.expected("like", "an earlier set-up");
    }
    SetUp.Tool tool = row.oneOf("tool", SetUp.Tool.class);
    if (tool == null && like == null) {
      row.expected("tool", "given");
    }
    String handpiece = text(row, "handpiece", like == null ? "" : like.handpiece());
    if (!handpiece.isEmpty()
        && !handpiece.equals("none")
        && !Handpieces.ids().contains(handpiece)) {
      row.fault("handpiece", "'" + handpiece + "' is no handpiece of the catalogue");
    }
    Map<ConditionKind, Condition> all = new EnumMap<>(ConditionKind.class);
    if (like != null) {
      all.putAll(like.conditions());
    }
    all.putAll(Objects.requireNonNullElse(own.get(id), Map.of()));
    SetUp read =
        new SetUp(
            id,
            text(row, "label", like == null ? "" : like.label()),
            tool != null ? tool : like != null ? like.tool() : SetUp.Tool.NONE,
            material(row, "work", like == null ? "" : like.work()),
            material(row, "cover", like == null ? "" : like.cover()),
            handpiece.equals("none") ? "" : handpiece,
            all);
    if (row.sound()) {
      byId.put(id, read);
    }
    return read;
  }

  private static String text(DataRow row, String column, String inherited) {
    return row.text(column).isEmpty() ? inherited : row.text(column);
  }

  private static String material(DataRow row, String column, String inherited) {
    String id = text(row, column, inherited);
    if (!id.isEmpty() && Materials.packaged().find(id).isEmpty()) {
      row.fault(column, "'" + id + "' is no material of the catalogue");
    }
    return id;
  }

  private static @Nullable Condition condition(
      DataRow row, Map<String, Map<ConditionKind, Condition>> own) {
    ConditionKind kind = row.requiredOneOf("condition", ConditionKind.class);
    if (!row.text("unit").equals(kind.unit())) {
      row.expected("unit", kind.unit());
    }
    Numbers numbers = row.numbers();
    if (!numbers.complete()) {
      row.fault("low", "low, typical and high must all be given");
      return null;
    }
    Basis basis = row.basis();
    if (basis == Basis.PROJECT_SETTING && row.text("note").isEmpty()) {
      row.fault("note", "an assumed condition must say why");
    }
    Condition condition =
        new Condition(
            kind,
            Objects.requireNonNull(numbers.low()),
            Objects.requireNonNull(numbers.typical()),
            Objects.requireNonNull(numbers.high()),
            basis,
            row.text("note"));
    String setUp = row.required("set_up");
    if (own.computeIfAbsent(setUp, s -> new EnumMap<>(ConditionKind.class)).put(kind, condition)
        != null) {
      row.fault("condition", "'" + kind.id() + "' stands twice for '" + setUp + "'");
    }
    return condition;
  }
}
