package kerfwright.app.label;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.words.Say;
import kerfwright.practice.label.OwnCode;

/** What can have a label, and what stands on it. */
public final class LabelSource {
  /** The label of a thing with this id, where there is one. */
  @FunctionalInterface
  public interface Writer {
    Optional<Label> label(UUID id, Say say);
  }

  private final Map<OwnCode.Kind, Writer> writers = new EnumMap<>(OwnCode.Kind.class);

  public LabelSource with(OwnCode.Kind kind, Writer writer) {
    writers.put(kind, writer);
    return this;
  }

  List<Label> labels(OwnCode.Kind kind, List<UUID> ids, Say say) {
    Writer writer = writers.get(kind);
    return writer == null
        ? List.of()
        : ids.stream().map(id -> writer.label(id, say)).flatMap(Optional::stream).toList();
  }
}
