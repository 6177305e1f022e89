package kerfwright.catalogue.stack;

import java.util.ArrayList;
import java.util.List;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;

/**
 * The layers usually met, outermost first.
 *
 * @param label what it is the usual stack of, in words
 * @param restorationId the restoration
 * @param tooth what kind of tooth
 * @param place where on the tooth: occlusal, fossa, facial, lingual or post
 * @param layers the layers
 * @param remarks notes that hold for the stack as a whole, such as the influence of age
 */
public record UsualStack(
    String label,
    String restorationId,
    Message tooth,
    String place,
    List<UsualLayer> layers,
    List<Finding> remarks) {
  public UsualStack {
    layers = List.copyOf(layers);
    remarks = List.copyOf(remarks);
  }

  /** Layers whose thickness the user must give. */
  public List<UsualLayer> missing() {
    return layers.stream().filter(UsualLayer::missing).toList();
  }

  public boolean complete() {
    return missing().isEmpty();
  }

  public List<SourceKey> sources() {
    return layers.stream().flatMap(l -> l.sources().stream()).distinct().sorted().toList();
  }

  /** What it is the usual stack of: restoration, kind of tooth, place. */
  public Message name() {
    return Message.of(
        "place.stack",
        Message.of("label.restoration-" + restorationId),
        tooth,
        Message.of("place." + place));
  }

  /** What must be told beside a plan that uses this stack. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    findings.add(
        new Finding(
            Finding.Severity.NOTE,
            "usual-stack",
            Message.of("finding.usual-stack-of", name()),
            sources()));
    for (UsualLayer layer : layers) {
      if (layer.missing()) {
        findings.add(
            new Finding(
                Finding.Severity.WARN,
                "usual-layer-missing",
                Message.of(
                    "finding.usual-layer-missing",
                    material(layer),
                    Message.of("stack." + layer.note())),
                layer.sources()));
      } else if (layer.basis() == Basis.FROM_MEMORY) {
        findings.add(
            new Finding(
                Finding.Severity.WARN,
                "usual-layer-from-memory",
                Message.of(
                    "finding.usual-layer-from-memory",
                    material(layer),
                    Message.of("stack." + layer.note())),
                layer.sources()));
      }
    }
    findings.addAll(remarks);
    return findings;
  }

  private static Message material(UsualLayer layer) {
    return Message.of("label.material-" + layer.materialId());
  }
}
