package kerfwright.planner.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.stack.UsualLayer;
import kerfwright.catalogue.stack.UsualProcedure;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.Contradiction.Fix;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Range;
import kerfwright.quantity.Rounded;

/**
 * What in a case cannot be meant together: it is asked, never planned. Each rule says one sentence
 * and names the line to change.
 */
public final class Contradictions {
  private static final List<Trait> INWARD = List.of(Trait.ENAMEL, Trait.CARIOUS, Trait.DENTINE);

  private final CutCase c;
  private final UsualProcedure usual;
  private final List<Contradiction> found = new ArrayList<>();

  private Contradictions(CutCase c) {
    this.c = c;
    this.usual = UsualStacks.packaged().procedure(c.procedure().id());
  }

  /** A procedure that is not done on a tooth of this class; looked at before anything else. */
  public static Optional<Contradiction> onTooth(Procedure procedure, Tooth tooth) {
    List<String> teeth = UsualStacks.packaged().procedure(procedure.id()).teeth();
    return teeth.isEmpty() || teeth.contains(tooth.toothClass().id())
        ? Optional.empty()
        : Optional.of(
            Contradiction.of(
                "procedure-for-other-teeth",
                "procedure",
                new Fix("procedure", Procedure.CAVITY_PREPARATION.id()),
                label(procedure),
                label(tooth)));
  }

  /** Every contradiction of a case; empty where it can be meant. */
  public static List<Contradiction> of(CutCase c) {
    Contradictions all = new Contradictions(c);
    all.aVitalPulpGoesWithNoRootFilling();
    all.anUnknownCrownIsTouchedBeforeItsLayersAreKnown();
    if (!c.stackFilledIn()) {
      all.layersRunFromTheOutsideIn();
      all.aNamedRestorationIsAmongTheLayers();
      all.aProcedureFindsTheLayerItWorksOn();
      all.layersEndWhereThePulpOfTheToothLies();
      all.theChamberLiesWhereTheLayersEnd();
      all.onlyDentineUnderDecayIsReadTooThick();
    } else if (c.filled("restoration").isEmpty()) {
      all.aProcedureFindsTheLayerItWorksOn();
    }
    if (c.filled("lesion").isEmpty()) {
      all.decayIsAmongTheLayersWhereItIsTold();
    }
    if (c.filled("intended").isEmpty()) {
      all.anIntendedRestorationIsOneTheProcedurePreparesFor();
    }
    if (c.filled("outline").isEmpty()) {
      OutlineOnTooth.against(c).ifPresent(all.found::add);
    }
    return List.copyOf(all.found);
  }

  private void aVitalPulpGoesWithNoRootFilling() {
    if (c.pulp() != PulpState.VITAL) {
      return;
    }
    Fix dead = new Fix("pulp", PulpState.NON_VITAL.id());
    if (usual.pulp().equals(PulpState.NON_VITAL.id())) {
      add("pulp-and-procedure", "pulp", dead, procedure());
    }
    c.layers().stream()
        .map(Layer::material)
        .filter(m -> m.has(Trait.CANAL_FILLING) || m.has(Trait.POST))
        .findFirst()
        .filter(m -> !usual.pulp().equals(PulpState.NON_VITAL.id()))
        .ifPresent(m -> add("pulp-and-layers", "pulp", dead, label(m)));
  }

  private void anUnknownCrownIsTouchedBeforeItsLayersAreKnown() {
    String named = c.restoration();
    UsualStacks stacks = UsualStacks.packaged();
    if (named == null || !stacks.isUnknown(named)) {
      return;
    }
    if (!c.stackFilledIn()) {
      add(
          "layers-of-unknown-crown",
          "restoration",
          Fix.leaveOut("restoration"),
          restoration(named));
    } else if (stacks.branches(named, c.procedure().id()).isEmpty()) {
      add(
          "unknown-crown-not-here",
          "restoration",
          new Fix("restoration", stacks.firstBranch(named)),
          restoration(named),
          procedure());
    }
  }

  private void layersRunFromTheOutsideIn() {
    int last = -1;
    for (Layer layer : c.layers()) {
      Material material = layer.material();
      int depth = depthOf(material);
      boolean over = material.has(Trait.CROWN) || material.has(Trait.ADHESIVE);
      if (depth >= 0 && depth < last || over && last >= 0) {
        add("layers-not-inward", "layers", Fix.leaveOut("layers"), label(material));
        return;
      }
      last = Math.max(last, depth);
    }
  }

  /** How far inward a tissue lies; -1 for what is no tissue. */
  private static int depthOf(Material material) {
    return INWARD.stream().filter(material::has).map(INWARD::indexOf).findFirst().orElse(-1);
  }

  private void aNamedRestorationIsAmongTheLayers() {
    String named = c.restoration();
    if (named == null) {
      return;
    }
    List<String> known = UsualStacks.packaged().knownBy(named);
    List<String> there = c.layers().stream().map(l -> l.material().id()).toList();
    known.stream()
        .map(one -> List.of(one.split("\\|")))
        .filter(one -> one.stream().noneMatch(there::contains))
        .map(one -> one.get(0))
        .findFirst()
        .ifPresent(
            id ->
                add(
                    "restoration-not-in-layers",
                    "layers",
                    Fix.leaveOut("layers"),
                    restoration(named),
                    label(Materials.packaged().get(id))));
    if (named.equals(UsualStacks.NATURAL)) {
      c.layers().stream()
          .map(Layer::material)
          .filter(m -> m.group() != Material.Group.TOOTH)
          .findFirst()
          .ifPresent(
              m ->
                  add(
                      "natural-tooth-with-restoration",
                      "restoration",
                      Fix.leaveOut("restoration"),
                      label(m)));
    }
  }

  private void aProcedureFindsTheLayerItWorksOn() {
    if (usual.fits(c.layers().stream().map(Layer::material).toList())) {
      return;
    }
    Material outer = c.layers().get(0).material();
    if (c.procedure().equals(Procedure.CROWN_PREPARATION) && outer.has(Trait.CROWN)) {
      add(
          "crown-still-on",
          c.stackFilledIn() ? "restoration" : "layers",
          new Fix("procedure", Procedure.CROWN_SECTIONING.id()),
          procedure(),
          label(outer));
      return;
    }
    List<Message> wanted =
        Stream.concat(usual.holds().stream(), usual.outer().stream())
            .map(Contradictions::word)
            .toList();
    if (c.stackFilledIn()) {
      Fix fix = new Fix("restoration", usual.restoration());
      add("procedure-not-on-these-layers", "restoration", fix, procedure(), wanted);
    } else {
      Fix fix = Fix.leaveOut("layers");
      add("procedure-not-on-these-layers", "layers", fix, procedure(), wanted);
    }
  }

  /** Deepest the pulp usually lies at the place of the procedure, or below a cusp. */
  private void layersEndWhereThePulpOfTheToothLies() {
    UsualStacks stacks = UsualStacks.packaged();
    double most =
        Stream.of(c.procedure().id(), Procedure.CROWN_PREPARATION.id())
            .filter(id -> !usual.backTooth().equals("post"))
            .map(id -> stacks.find(c.tooth(), null, id, null))
            .flatMap(Optional::stream)
            .filter(UsualStack::complete)
            .mapToDouble(Contradictions::deepestMm)
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    double told = c.layers().stream().mapToDouble(l -> l.thickness().typical().millimetres()).sum();
    if (told > most) {
      add(
          "layers-too-thick",
          "layers",
          Fix.leaveOut("layers"),
          Rounded.places(told, 1),
          tooth(),
          Rounded.places(most, 1));
    }
  }

  private static double deepestMm(UsualStack stack) {
    return stack.layers().stream()
        .map(UsualLayer::thickness)
        .filter(Objects::nonNull)
        .map(Range::high)
        .mapToDouble(Length::millimetres)
        .sum();
  }

  private void theChamberLiesWhereTheLayersEnd() {
    ChamberDepth chamber = c.condition().chamber();
    boolean whole = c.layers().get(c.layers().size() - 1).material().has(Trait.DENTINE);
    if (chamber == null || chamber.known() == Known.RANGE || !whole) {
      return;
    }
    double low = UsualValues.cuspMm(c.tooth());
    double high = low + (low > 0 ? 1 : 0);
    low -= low > 0 ? 1 : 0;
    for (Layer layer : c.layers()) {
      low += layer.thickness().low().millimetres();
      high += layer.thickness().high().millimetres();
    }
    if (chamber.below().high().millimetres() < low || chamber.below().low().millimetres() > high) {
      add(
          "chamber-not-under-layers",
          "chamber",
          Fix.leaveOut("chamber"),
          Rounded.places(chamber.below().typical().millimetres(), 1),
          Rounded.places(low, 1),
          Rounded.places(high, 1));
    }
  }

  private void onlyDentineUnderDecayIsReadTooThick() {
    for (int i = 0; i < c.layers().size(); i++) {
      Layer layer = c.layers().get(i);
      boolean under = i > 0 && c.layers().get(i - 1).material().has(Trait.CARIOUS);
      if (layer.known() == Known.BITEWING && !(under && layer.material().has(Trait.DENTINE))) {
        add(
            "bitewing-without-decay",
            "layers[" + i + "].known",
            new Fix("layers[" + i + "].known", Known.FILM.id()),
            label(layer.material()));
      }
    }
  }

  private void decayIsAmongTheLayersWhereItIsTold() {
    Lesion lesion = c.lesion();
    if (lesion == null) {
      return;
    }
    boolean there = c.layers().stream().anyMatch(l -> l.material().has(Trait.CARIOUS));
    if (!usual.lesion()) {
      add("lesion-not-asked", "lesion", Fix.leaveOut("lesion"), procedure());
    } else if (!there && lesion.depth() != Lesion.Depth.SHALLOW) {
      add(
          "lesion-not-in-layers",
          "lesion",
          c.stackFilledIn() ? new Fix("restoration", "carious") : Fix.leaveOut("layers"),
          Message.of("case.lesion-" + lesion.depth().id()));
    }
  }

  private void anIntendedRestorationIsOneTheProcedurePreparesFor() {
    String intended = c.intended();
    if (intended != null && !usual.intended().contains(intended)) {
      add(
          "intended-not-for-procedure",
          "intended",
          usual.intended().isEmpty()
              ? Fix.leaveOut("intended")
              : new Fix("intended", usual.intended().get(0)),
          procedure(),
          intended(intended));
    }
  }

  private void add(String what, String field, Fix fix, Object... values) {
    found.add(Contradiction.of(what, field, fix, values));
  }

  private Message procedure() {
    return label(c.procedure());
  }

  private Message tooth() {
    return label(c.tooth());
  }

  private static Message label(Procedure procedure) {
    return Message.of("label.procedure-" + procedure.id());
  }

  static Message label(Tooth tooth) {
    String arch = tooth.upper() ? "maxillary-" : "mandibular-";
    return Message.of(
        "place." + (tooth.primary() ? "primary-" : "") + arch + tooth.toothClass().id());
  }

  private static Message restoration(String id) {
    return Message.of("label.restoration-" + id);
  }

  private static Message intended(String id) {
    return Message.of("label.intended-" + id);
  }

  private static Message label(Material material) {
    return Message.of("label.material-" + material.id());
  }

  private static Message word(String word) {
    return word.startsWith("#")
        ? Message.of("label.trait-" + word.substring(1))
        : Message.of("label.material-" + word);
  }
}
