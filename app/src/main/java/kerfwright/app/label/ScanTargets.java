package kerfwright.app.label;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.label.OwnCode;

/** Where the practice's own codes lead. */
public final class ScanTargets {
  /** The page of a thing with this id, where there is one. */
  @FunctionalInterface
  public interface Target {
    Optional<String> page(UUID id);
  }

  private final Map<OwnCode.Kind, Target> targets = new EnumMap<>(OwnCode.Kind.class);

  /** Instruments lead to their page; the others are named by {@link #with}. */
  public ScanTargets(Drawer drawer) {
    targets.put(
        OwnCode.Kind.INSTRUMENT,
        id -> drawer.find(id).map(item -> "/drawer/item/" + item.id() + "?scanned=1"));
  }

  public ScanTargets with(OwnCode.Kind kind, Target target) {
    targets.put(kind, target);
    return this;
  }

  Optional<String> page(OwnCode code) {
    return Optional.ofNullable(targets.get(code.kind())).flatMap(one -> one.page(code.id()));
  }
}
