package kerfwright.catalogue.stack;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.source.Sources;
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

  private final Map<String, String> restorations;
  private final Map<String, StackTable.Places> places;
  private final List<StackRow> rows;

  private UsualStacks(
      Map<String, String> restorations,
      Map<String, StackTable.Places> places,
      List<StackRow> rows) {
    this.restorations = restorations;
    this.places = places;
    this.rows = rows;
  }

  public static UsualStacks packaged() {
    return Packaged.STACKS;
  }

  public static UsualStacks load(
      Anatomy anatomy, Materials materials, Sources sources, Faults faults) {
    Map<String, String> restorations = StackTable.restorations(faults);
    return new UsualStacks(
        restorations,
        StackTable.places(faults),
        StackTable.rows(List.copyOf(restorations.keySet()), anatomy, materials, sources, faults));
  }

  /** Restorations by id, each with its name for people. */
  public Map<String, String> restorations() {
    return Collections.unmodifiableMap(restorations);
  }

  /** Procedures by id that a usual stack can be asked for. */
  public List<String> procedures() {
    return List.copyOf(places.keySet());
  }

  /**
   * The usual stack.
   *
   * @param tooth the tooth
   * @param restorationId an id of {@link #restorations()}, or null for a natural tooth
   * @param procedureId an id of {@link #procedures()}
   * @param ageYears age of the patient, or null
   * @return the stack, whose layers may lack a thickness; empty where the restoration has no usual
   *     stack for that procedure
   * @throws IllegalArgumentException for an id that is unknown
   */
  public Optional<UsualStack> find(
      Tooth tooth, @Nullable String restorationId, String procedureId, @Nullable Integer ageYears) {
    String restoration = restorationId == null ? NATURAL : restorationId;
    String label = restorations.get(restoration);
    StackTable.Places at = places.get(procedureId);
    if (label == null) {
      throw new IllegalArgumentException("There is no restoration '" + restoration + "'");
    }
    if (at == null) {
      throw new IllegalArgumentException("There is no procedure '" + procedureId + "'");
    }
    ToothPlace where = ToothPlace.of(tooth);
    String place = where.front() ? at.frontTooth() : at.backTooth();
    List<UsualLayer> layers = layers(restoration, place, where);
    if (layers.isEmpty() && place.equals("fossa")) {
      place = "occlusal"; // a crown is no thinner in the fossa, as far as is told
      layers = layers(restoration, place, where);
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
        "no figure retrieved for primary teeth: measure on the radiograph");
  }

  private static UsualLayer aged(UsualLayer layer, int ageYears) {
    Range<Length> thickness = layer.thickness();
    if (thickness == null || !layer.materialId().equals("dentine")) {
      return layer;
    }
    return new UsualLayer(
        layer.materialId(),
        AgeOfTooth.widen(thickness, ageYears),
        layer.arithmetic(),
        layer.takenFrom(),
        layer.sources(),
        layer.basis(),
        layer.note());
  }

  private static final class Packaged {
    static final UsualStacks STACKS = read();

    private static UsualStacks read() {
      Faults faults = new Faults();
      UsualStacks stacks =
          load(Anatomy.packaged(), Materials.packaged(), Sources.packaged(), faults);
      faults.throwIfAny();
      return stacks;
    }
  }
}
