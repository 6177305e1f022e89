package kerfwright.planner.alike;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.tool.Instrument;
import org.jspecify.annotations.Nullable;

/**
 * Ranks instruments by how much they are like a wanted one: removal rate, roughness, wear, torque,
 * speed, whirl limit, reach and outline are computed for both and compared.
 *
 * <p>Score = 100 exp(-d), where d adds up the differences. A difference of a computed figure counts
 * as the mean of |ln(ratio)| over the materials the wanted kind is used in; what stops the work
 * counts as a fixed step. The weights are project settings: they order neighbours and decide
 * nothing. Left out: price, balance, the maker's own tolerances.
 */
public final class Alike {
  private final InstrumentProperties wanted;
  private final Behaviour behaviour;

  private Alike(InstrumentProperties wanted, Behaviour behaviour) {
    this.wanted = wanted;
    this.behaviour = behaviour;
  }

  /** What an instrument is compared by; null where grit or blades are not known. */
  public static @Nullable Alike to(InstrumentProperties wanted) {
    Instrument instrument = Instrument.of(asNew("wanted", wanted));
    return instrument == null
        ? null
        : new Alike(wanted, Behaviour.of(instrument, UsualWork.of(wanted.kind())));
  }

  /** An instrument as it comes from its maker, clean. */
  public static DrawerInstrument asNew(String id, InstrumentProperties properties) {
    return new DrawerInstrument(id, properties, 0, 0, DrawerInstrument.State.CLEAN);
  }

  /** The materials compared in: those the wanted one can cut. */
  public List<Material> materials() {
    return List.copyOf(behaviour.cuts().keySet());
  }

  /** The handpiece the comparison is made in. */
  public String handpiece() {
    return behaviour.handpiece().label();
  }

  /** Load of the comparison, N. */
  public double loadN() {
    return behaviour.instrument().part() instanceof kerfwright.planner.tool.AbrasivePart a
            && a.polishes()
        ? Behaviour.POLISHING_LOAD_N
        : Behaviour.LOAD_N;
  }

  /**
   * Neighbours of the drawer, most alike first; instruments without grit or blades are left out.
   */
  public List<Neighbour> among(List<DrawerInstrument> drawer) {
    List<Neighbour> found = new ArrayList<>();
    for (DrawerInstrument each : drawer) {
      Instrument instrument = Instrument.of(each);
      if (instrument != null) {
        found.add(neighbour(instrument));
      }
    }
    found.sort(
        Comparator.comparingDouble((Neighbour n) -> -n.score())
            .thenComparing(n -> n.instrument().state())
            .thenComparing(n -> n.instrument().id()));
    return List.copyOf(found);
  }

  /** Neighbours among ordinary instruments of the catalogue, most alike first. */
  public List<Neighbour> inCatalogue() {
    return among(CatalogueNeighbours.of(wanted));
  }

  private Neighbour neighbour(Instrument other) {
    Behaviour its = Behaviour.of(other, materials());
    List<Difference> differences = new ArrayList<>(Fit.differences(wanted, behaviour, its));
    differences.addAll(CutCompared.differences(behaviour, its));
    differences.addAll(NeighbourNotes.differences(wanted, other.drawer()));
    differences.sort(Comparator.comparing(Difference::effect).thenComparing(d -> -d.distance()));
    double distance = differences.stream().mapToDouble(Difference::distance).sum();
    return new Neighbour(
        other.drawer(),
        100 * Math.exp(-distance),
        differences.stream().filter(d -> d.remark() != CutCompared.NOTHING).toList());
  }
}
