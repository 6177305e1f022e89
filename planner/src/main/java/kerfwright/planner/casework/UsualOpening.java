package kerfwright.planner.casework;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.operation.Asked;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.operation.Variant;
import kerfwright.catalogue.size.Place;
import kerfwright.catalogue.size.Size;
import kerfwright.catalogue.size.UsualOutline;
import kerfwright.catalogue.size.UsualSizes;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import kerfwright.quantity.Length;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** Usual sizes as a case needs them: the opening of a procedure, the crown of a tooth. */
final class UsualOpening {
  private UsualOpening() {}

  /** Where the sizes of a case are asked for. */
  static Place place(
      Procedure procedure, Tooth tooth, Condition condition, @Nullable String intended) {
    Lesion lesion = condition.lesion();
    Asked asked =
        new Asked(
            procedure.id(),
            tooth,
            condition.restoration() == null ? "" : condition.restoration(),
            condition.layers().stream().map(Layer::material).toList(),
            intended == null ? "" : intended,
            lesion == null ? "" : lesion.depth().id(),
            condition.pulp().id());
    String variant = OperationTable.inUse().variant(asked).map(Variant::id).orElse("");
    return new Place(tooth, procedure.id(), variant);
  }

  /**
   * The opening usually made there, with how it is known; empty where none is told.
   *
   * @param basis how sure it is
   */
  record Known(Outline outline, List<SourceKey> sources, Basis basis) {}

  static Optional<Known> at(Place place) {
    return UsualSizes.packaged()
        .outline(place)
        .map(
            usual ->
                new Known(
                    outline(usual), usual.provenance().sources(), usual.provenance().basis()));
  }

  private static Outline outline(UsualOutline usual) {
    Outline.Shape shape = Identified.of(Outline.Shape.class, usual.shape()).orElseThrow();
    return new Outline(shape, usual.length(), usual.width());
  }

  /** A size of the crown of a tooth; empty where none is told, as for primary teeth. */
  static Optional<Length> crown(String name, Tooth tooth) {
    return UsualSizes.packaged()
        .find(name, new Place(tooth, "", ""))
        .map(Size::value)
        .map(value -> Length.ofMillimetres(value.value(other -> Double.NaN)));
  }
}
