package kerfwright.catalogue.stack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** The layers usually met on a tooth, by restoration and by where the procedure works. */
public final class UsualStacks {
  /** The id of a tooth with nothing on it. */
  public static final String NATURAL = "none";

  /** The id of a tooth with decay and nothing on it. */
  public static final String CARIOUS = "carious";

  /** Depth of a lesion where nobody says: it reaches the middle third of the dentine. */
  public static final String USUAL_DEPTH = "moderate";

  /** Height of a cusp over the fossa, from memory (dental anatomy): 1.5 to 2.5 mm. */
  public static final double CUSP_MM = 2.0;

  private static final double LEAST_CUSP_MM = 1.5;

  private static final UsualStacks PACKAGED = Topic.sound(UsualStacks::read);

  private final Map<String, StackTable.Restoration> restorations;
  private final Map<String, UsualProcedure> procedures;
  private final List<StackRow> rows;
  private final List<Branch> branches;

  private UsualStacks(
      Map<String, StackTable.Restoration> restorations,
      Map<String, UsualProcedure> procedures,
      List<StackRow> rows,
      List<Branch> branches) {
    this.restorations = restorations;
    this.procedures = procedures;
    this.rows = rows;
    this.branches = branches;
  }

  public static UsualStacks packaged() {
    return PACKAGED;
  }

  private static UsualStacks read(Faults faults) {
    Map<String, StackTable.Restoration> restorations =
        Topic.byId(
            Topic.read("stack/restorations.csv", faults, StackTable::restoration),
            StackTable.Restoration::id);
    Set<String> ids = restorations.keySet();
    return new UsualStacks(
        restorations,
        Topic.byId(
            Topic.read("stack/procedures.csv", faults, row -> StackTable.procedure(row, ids)),
            UsualProcedure::id),
        Topic.read("stack/values.csv", faults, row -> StackTable.row(row, ids)),
        Topic.read("stack/branches.csv", faults, row -> StackTable.branch(row, ids)));
  }

  /** Restorations by id, each with its name for people. */
  public Map<String, String> restorations() {
    Map<String, String> labels = new LinkedHashMap<>();
    restorations.forEach((id, one) -> labels.put(id, one.label()));
    return labels;
  }

  /** What a restoration may turn out to be; empty where its material is known. */
  public List<Branch> branches(@Nullable String restorationId, String procedureId) {
    return restorationId == null
        ? List.of()
        : branches.stream().filter(b -> b.serves(restorationId, procedureId)).toList();
  }

  /** True for a restoration whose material only a touch tells. */
  public boolean isUnknown(String restorationId) {
    return branches.stream().anyMatch(b -> b.restoration().equals(restorationId));
  }

  /** What it is most often; its layers stand in until the touch has told. */
  public String firstBranch(String restorationId) {
    return branches.stream()
        .filter(b -> b.restoration().equals(restorationId))
        .findFirst()
        .orElseThrow()
        .branch();
  }

  /** Materials a restoration is known by; empty for a natural tooth. */
  public List<String> knownBy(String restorationId) {
    return known(restorationId).layers();
  }

  /** Ids of the procedures that are described. */
  public List<String> procedures() {
    return List.copyOf(procedures.keySet());
  }

  /** What a case of a procedure usually is; a plain one where nobody has described it. */
  public UsualProcedure procedure(String id) {
    UsualProcedure described = procedures.get(id);
    return described == null ? UsualProcedure.plain(id) : described;
  }

  /** The usual stack, decay of moderate depth. */
  public Optional<UsualStack> find(
      Tooth tooth, @Nullable String restorationId, String procedureId, @Nullable Integer ageYears) {
    return find(tooth, restorationId, procedureId, ageYears, USUAL_DEPTH);
  }

  /**
   * The usual stack.
   *
   * @param tooth the tooth
   * @param restorationId an id of {@link #restorations()}, or null for a natural tooth
   * @param procedureId an id of {@link #procedures()}
   * @param ageYears age of the patient, or null
   * @param lesion how deep decay reaches: shallow, moderate or deep
   * @return the stack, whose layers may lack a thickness; empty where the restoration has no usual
   *     stack for that procedure
   * @throws IllegalArgumentException for an id that is unknown
   */
  public Optional<UsualStack> find(
      Tooth tooth,
      @Nullable String restorationId,
      String procedureId,
      @Nullable Integer ageYears,
      String lesion) {
    String restoration = restorationId == null ? NATURAL : restorationId;
    if (isUnknown(restoration)) {
      restoration = firstBranch(restoration);
    }
    String label = known(restoration).label();
    UsualProcedure at = procedure(procedureId);
    ToothPlace where = ToothPlace.of(tooth);
    String place = where.front() ? at.frontTooth() : at.backTooth();
    List<UsualLayer> layers =
        restoration.equals(CARIOUS)
            ? DepthOfDecay.layers(layers(NATURAL, place, where), lesion)
            : layers(restoration, place, where);
    if (layers.isEmpty() && place.equals("fossa")) {
      layers =
          layers(restoration, "occlusal", where).stream().map(UsualStacks::fromTheFossa).toList();
    }
    if (layers.isEmpty()) {
      return Optional.empty();
    }
    List<Finding> remarks = new ArrayList<>();
    if (where.primary()) {
      layers = layers.stream().map(UsualStacks::unknownInPrimaryTeeth).toList();
    } else if (ageYears != null) {
      int age = ageYears;
      layers = layers.stream().map(layer -> aged(layer, age)).toList();
      remarks.add(AgeOfTooth.growthNote(age));
      AgeOfTooth.chamberNote(where, age).ifPresent(remarks::add);
    }
    return Optional.of(
        new UsualStack(
            label + ", " + where.label() + ", " + place,
            restoration,
            where.message(),
            place,
            layers,
            remarks));
  }

  private StackTable.Restoration known(String restoration) {
    StackTable.Restoration known = restorations.get(restoration);
    if (known == null) {
      throw new IllegalArgumentException("There is no restoration '" + restoration + "'");
    }
    return known;
  }

  /**
   * A crown is no thinner in the fossa, as far as is told, but the chamber is nearer by the height
   * of the cusp: 2.0 mm, 1.5 at least. The low end is told from the fossa already.
   */
  private static UsualLayer fromTheFossa(UsualLayer layer) {
    Range<Length> thickness = layer.thickness();
    if (thickness == null || !layer.has(Trait.DENTINE)) {
      return layer;
    }
    double low = thickness.low().millimetres();
    double typical = Math.max(low, thickness.typical().millimetres() - CUSP_MM);
    double high = Math.max(typical, thickness.high().millimetres() - LEAST_CUSP_MM);
    return layer.with(
        new Range<>(
            Length.ofMillimetres(low), Length.ofMillimetres(typical), Length.ofMillimetres(high)),
        layer.arithmetic() + "; less the height of the cusp, 2.0 (1.5 at least)");
  }

  private List<UsualLayer> layers(String restoration, String place, ToothPlace tooth) {
    Map<Integer, StackRow> best = new TreeMap<>();
    rows.stream()
        .filter(row -> row.fits(restoration, place, tooth))
        .sorted(Comparator.comparingInt(StackRow::weight))
        .forEach(row -> best.put(row.order(), row));
    return best.values().stream().map(StackRow::layer).toList();
  }

  private static UsualLayer unknownInPrimaryTeeth(UsualLayer layer) {
    return new UsualLayer(
        layer.materialId(),
        null,
        "",
        List.of(),
        List.of(),
        Basis.PROJECT_SETTING,
        "none-for-primary");
  }

  private static UsualLayer aged(UsualLayer layer, int ageYears) {
    Range<Length> thickness = layer.thickness();
    if (thickness == null || !layer.has(Trait.DENTINE)) {
      return layer;
    }
    return layer.with(AgeOfTooth.widen(thickness, ageYears), layer.arithmetic());
  }
}
