package kerfwright.planner.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.stack.Anatomy;
import kerfwright.catalogue.stack.AnatomyRow;
import kerfwright.catalogue.stack.Branch;
import kerfwright.catalogue.stack.Readings;
import kerfwright.catalogue.stack.UsualLayer;
import kerfwright.catalogue.stack.UsualProcedure;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothClass;
import kerfwright.quantity.Basis;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * What a case of a procedure on a tooth usually is: stands in for each field the case leaves open,
 * and remembers which it stood in for.
 */
public final class UsualValues {
  /** Water reaching the tip where nobody says, mL/min. */
  public static final double WATER_ML_PER_MIN = 50;

  private static final List<String> HANDPIECES =
      List.of("turbine", "electric-1to5", "electric-1to1");
  private static final List<SourceKey> WATER =
      List.of(new SourceKey("cavalcanti-2005"), new SourceKey("supplier-safety-notes"));
  private static final List<SourceKey> PRACTICE = List.of(SourceKey.COMMON_PRACTICE);
  private static final double CUSP_ERROR_MM = 0.5;
  private static final double LEAST_DENTINE_MM = 0.3;

  private final Procedure procedure;
  private final Tooth tooth;
  private final UsualProcedure usual;
  private final List<FilledIn> filledIn = new ArrayList<>();

  public UsualValues(Procedure procedure, Tooth tooth) {
    this.procedure = procedure;
    this.tooth = tooth;
    this.usual = UsualStacks.packaged().procedure(procedure.id());
  }

  /** What was filled in so far. */
  public List<FilledIn> filledIn() {
    return List.copyOf(filledIn);
  }

  /** A case that is only computed needs no reference: tooth and procedure stand for it. */
  public String reference(@Nullable String told) {
    if (told != null) {
      return told;
    }
    fill("case", List.of(), Basis.PROJECT_SETTING);
    return tooth.fdi() + "-" + procedure.id();
  }

  /** Unknown where nobody says, but for procedures that only a root-filled tooth can need. */
  public PulpState pulp(@Nullable PulpState told) {
    if (told != null || usual.pulp().isEmpty()) {
      return told == null ? PulpState.UNKNOWN : told;
    }
    fill("pulp", PRACTICE, Basis.COMMON_PRACTICE);
    return PulpState.of(usual.pulp());
  }

  /** What stands on the tooth; nothing is supposed where the layers are told. */
  public @Nullable String restoration(@Nullable String told, boolean layersTold) {
    if (told != null || layersTold || usual.restoration().equals(UsualStacks.NATURAL)) {
      return told;
    }
    fill("restoration", PRACTICE, Basis.COMMON_PRACTICE);
    return usual.restoration();
  }

  /** The restoration to come, where the procedure asks for it. */
  public @Nullable String intended(@Nullable String told) {
    if (told != null || usual.intended().isEmpty()) {
      return told;
    }
    fill("intended", PRACTICE, Basis.COMMON_PRACTICE);
    return usual.intended().get(0);
  }

  /** The decay, where the procedure asks for it: as deep as the layers told say, else moderate. */
  public @Nullable Lesion lesion(@Nullable Lesion told, @Nullable List<Layer> layers) {
    if (told != null || !usual.lesion()) {
      return told;
    }
    fill("lesion", Readings.packaged().get("decay-moderate").sources(), Basis.DERIVED);
    return new Lesion(
        layers == null ? Lesion.Depth.MODERATE : depthIn(layers), Lesion.Activity.ACTIVE, null);
  }

  private static Lesion.Depth depthIn(List<Layer> layers) {
    double decay = typicalMm(layers, Trait.CARIOUS);
    double share = decay == 0 ? 0 : decay / (decay + typicalMm(layers, Trait.DENTINE));
    for (Lesion.Depth depth : Lesion.Depth.values()) {
      if (share <= Readings.packaged().get("decay-" + depth.id()).high()) {
        return depth;
      }
    }
    return Lesion.Depth.DEEP;
  }

  /** The usual stack; empty where there is none of this restoration here. */
  public Optional<UsualStack> stack(@Nullable String restoration, @Nullable Lesion lesion) {
    String depth = lesion == null ? UsualStacks.USUAL_DEPTH : lesion.depth().id();
    return UsualStacks.packaged().find(tooth, restoration, procedure.id(), null, depth);
  }

  /** Layers as told; one told to be as usual gets the range published for it here. */
  public List<Layer> published(
      List<Layer> told, @Nullable String restoration, @Nullable Lesion lesion) {
    List<UsualLayer> usualLayers =
        stack(restoration, lesion).map(UsualStack::layers).orElse(List.of());
    return told.stream().map(layer -> published(layer, usualLayers)).toList();
  }

  private static Layer published(Layer told, List<UsualLayer> usualLayers) {
    if (told.known() != Known.USUAL) {
      return told;
    }
    return usualLayers.stream()
        .filter(one -> one.materialId().equals(told.material().id()))
        .map(UsualLayer::thickness)
        .filter(Objects::nonNull)
        .findFirst()
        .map(range -> Known.USUAL.around(told.thickness().typical(), range))
        .map(range -> new Layer(told.material(), range, Known.USUAL))
        .orElse(told);
  }

  /** Its layers, the dentine as deep as the chamber is told to lie; all thicknesses are known. */
  public List<Layer> layers(UsualStack stack, @Nullable ChamberDepth chamber) {
    Basis basis =
        stack.layers().stream().anyMatch(l -> l.basis() == Basis.FROM_MEMORY)
            ? Basis.FROM_MEMORY
            : Basis.DERIVED;
    fill("layers", stack.sources(), basis);
    List<Layer> layers = new ArrayList<>();
    for (UsualLayer layer : stack.layers()) {
      Range<Length> thickness = layer.thickness();
      if (thickness == null) {
        throw new IllegalArgumentException(stack.label() + " lacks a thickness");
      }
      layers.add(new Layer(Materials.packaged().get(layer.materialId()), thickness, Known.USUAL));
    }
    return chamber == null ? layers : reaching(layers, chamber);
  }

  private List<Layer> reaching(List<Layer> layers, ChamberDepth chamber) {
    int last = layers.size() - 1;
    Layer dentine = layers.get(last);
    if (!dentine.material().has(Trait.DENTINE)) {
      return layers;
    }
    double above =
        layers.subList(0, last).stream()
            .mapToDouble(l -> l.thickness().typical().millimetres())
            .sum();
    Range<Length> told = chamber.below();
    double mm = Math.max(LEAST_DENTINE_MM, told.typical().millimetres() - cuspMm(tooth) - above);
    double cusp = cuspMm(tooth) > 0 ? CUSP_ERROR_MM : 0;
    double less = Math.hypot(told.typical().millimetres() - told.low().millimetres(), cusp);
    double more = Math.hypot(told.high().millimetres() - told.typical().millimetres(), cusp);
    List<Layer> reaching = new ArrayList<>(layers.subList(0, last));
    reaching.add(
        new Layer(
            dentine.material(),
            new Range<>(
                Length.ofMillimetres(Math.max(mm / 2, mm - less)),
                Length.ofMillimetres(mm),
                Length.ofMillimetres(mm + more)),
            chamber.known()));
    return reaching;
  }

  /**
   * How deep the chamber lies, where it is to be opened: told, as the layers told reach it, or the
   * mean of the literature.
   */
  public @Nullable ChamberDepth chamber(
      @Nullable ChamberDepth told, @Nullable List<Layer> layersTold) {
    if (told != null || !procedure.opensChamber()) {
      return told;
    }
    if (layersTold != null) {
      return reachedBy(layersTold);
    }
    AnatomyRow row = Anatomy.packaged().toChamber(tooth).orElse(null);
    Double mean = row == null ? null : row.numbers().typical();
    if (row == null || mean == null) {
      return null;
    }
    fill("chamber", row.sources(), row.basis());
    Double low = row.numbers().low();
    Double high = row.numbers().high();
    Length typical = Length.ofMillimetres(mean);
    Range<Length> below =
        low == null || high == null
            ? Known.USUAL.aroundDepth(typical)
            : new Range<>(Length.ofMillimetres(low), typical, Length.ofMillimetres(high));
    return new ChamberDepth(below, Known.USUAL);
  }

  private ChamberDepth reachedBy(List<Layer> layers) {
    double low = cuspMm(tooth);
    double typical = low;
    double high = low;
    for (Layer layer : layers) {
      low += layer.thickness().low().millimetres();
      typical += layer.thickness().typical().millimetres();
      high += layer.thickness().high().millimetres();
    }
    return new ChamberDepth(
        new Range<>(
            Length.ofMillimetres(low), Length.ofMillimetres(typical), Length.ofMillimetres(high)),
        Known.RANGE);
  }

  /** Height of the cusps over the place an opening starts in; a front tooth has none. */
  static double cuspMm(Tooth tooth) {
    return tooth.toothClass() == ToothClass.INCISOR || tooth.toothClass() == ToothClass.CANINE
        ? 0
        : UsualStacks.CUSP_MM;
  }

  /** The opening or surface; null where none is usual. */
  public @Nullable Outline outline(
      @Nullable Outline told, Condition condition, @Nullable String intended) {
    if (told != null) {
      return told;
    }
    return UsualOpening.at(UsualOpening.place(procedure, tooth, condition, intended))
        .map(
            one -> {
              fill("outline", one.sources(), one.basis());
              return one.outline();
            })
        .orElse(null);
  }

  /**
   * A case whose restoration has turned out to be of a known material: its usual layers, and all
   * the case itself told. Empty where nothing usual is known of it on that tooth.
   */
  public static Optional<CutCase> turnedOut(CutCase c, Branch branch) {
    Procedure procedure =
        branch.becomes().isEmpty() ? c.procedure() : new Procedure(branch.becomes());
    UsualValues usual = new UsualValues(procedure, c.tooth());
    UsualStack stack = usual.stack(branch.branch(), null).filter(UsualStack::complete).orElse(null);
    if (stack == null) {
      return Optional.empty();
    }
    boolean told = c.filled("chamber").isEmpty();
    ChamberDepth known = told ? c.condition().chamber() : null;
    List<Layer> layers = usual.layers(stack, known);
    Condition condition =
        new Condition(
            c.pulp(),
            branch.branch(),
            null,
            layers,
            procedure.opensChamber() ? c.condition().chamber() : null);
    boolean own = procedure.equals(c.procedure()) && c.filled("outline").isEmpty();
    Outline outline = usual.outline(own ? c.outline() : null, condition, null);
    return Optional.of(
        new CutCase(
            c.reference(),
            procedure,
            c.tooth(),
            condition,
            new Aim(outline == null ? c.outline() : outline),
            c.atHand(),
            usual.filledIn()));
  }

  /** What is at hand. */
  public AtHand atHand(List<Handpiece> told, @Nullable FlowRate water) {
    List<Handpiece> handpieces = told;
    if (told.isEmpty()) {
      fill("handpieces", PRACTICE, Basis.COMMON_PRACTICE);
      handpieces = HANDPIECES.stream().map(id -> Handpieces.byId(id).orElseThrow()).toList();
    }
    if (water == null) {
      fill("coolant_ml_per_min", WATER, Basis.SEEN);
    }
    return new AtHand(
        handpieces, water == null ? FlowRate.ofMillilitresPerMinute(WATER_ML_PER_MIN) : water);
  }

  private void fill(String field, List<SourceKey> sources, Basis basis) {
    filledIn.add(new FilledIn(field, sources, basis));
  }

  private static double typicalMm(List<Layer> layers, Trait trait) {
    return layers.stream()
        .filter(l -> l.material().has(trait))
        .mapToDouble(l -> l.thickness().typical().millimetres())
        .sum();
  }
}
