package kerfwright.app.reference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.app.words.Say;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.caution.Cautions;
import kerfwright.catalogue.claim.Claims;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.BladeCounts;
import kerfwright.catalogue.instrument.Characteristics;
import kerfwright.catalogue.instrument.Grits;
import kerfwright.catalogue.instrument.NominalSizes;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.limit.SafetyLimits;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.ModelInput;
import kerfwright.catalogue.material.Property;
import kerfwright.catalogue.material.ToolMaterials;
import kerfwright.catalogue.number.UsSizes;
import kerfwright.catalogue.operation.WholeTime;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;
import kerfwright.catalogue.stack.Anatomy;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.planner.rule.EvidenceRules;
import kerfwright.quantity.Identified;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** What rests on each source, over every table of the catalogue and every rule of the planner. */
public final class SourceUses {
  /**
   * One thing that rests on a source.
   *
   * @param topic kind of thing
   * @param text what it is, as its row says it
   * @param words what it is in every language, null where only the row says it
   * @param href where it is shown, or empty
   */
  public record Rest(String topic, String text, @Nullable Message words, String href) {
    public String in(Say say) {
      return words == null ? text : say.of(words);
    }
  }

  private final Map<SourceKey, List<Rest>> bySource = new TreeMap<>();

  private SourceUses() {
    materials();
    instruments();
    for (var row : Evidence.packaged().all()) {
      add(row.sources(), "finding", row.sentence(), findingHref(row.id()));
    }
    for (var limit : SafetyLimits.packaged().all()) {
      Message words = Message.of("reference.limit-" + limit.id());
      add(limit.sources(), "limit", words, Place.LIMITS.path() + "#" + limit.id());
    }
    for (var caution : Cautions.packaged().all()) {
      Message words = caution.finding().message();
      add(caution.sources(), "caution", words, Place.LIMITS.path() + "#" + caution.id());
    }
    for (var row : Anatomy.packaged().teeth()) {
      String text = row.tooth() + ", " + row.quantity() + ": " + row.landmark();
      add(row.sources(), "dimension", text, Place.LAYERS.path() + "#" + row.id());
    }
    for (var row : Anatomy.packaged().restorations()) {
      String text = row.restoration() + ": " + row.site();
      add(row.sources(), "restoration", text, Place.LAYERS.path() + "#" + row.id());
    }
    for (var figure : ReprocessingFigures.packaged().all()) {
      String text = Written.spaced(figure.quantity()) + ": " + figure.item();
      add(figure.sources(), "reprocessing", text, "");
    }
    for (var time : WholeTime.all()) {
      add(time.provenance(), "operation", Message.of("plan.whole-" + time.id()), "");
    }
    for (var rule : EvidenceRules.all()) {
      Message words = rule.message();
      add(rule.sources(), new Rest("rule", "", words, Place.EVIDENCE.path() + "#rules"));
    }
    for (var claim : Claims.packaged().all()) {
      Message words = Message.of("claim." + claim.id());
      add(claim.sources(), "claim", words, "/teach/claims#" + claim.id());
    }
    Message notation = Message.of("reference.rest-notation");
    add(ToothNotation.SOURCES, "teeth", notation, Place.TEETH.path());
  }

  /** The packaged catalogue, read once. */
  public static SourceUses packaged() {
    return Packaged.INDEX;
  }

  private static String findingHref(String id) {
    return Place.EVIDENCE.path() + "#" + id;
  }

  private void materials() {
    for (Material material : Materials.packaged().all()) {
      String href = Written.material(material.id());
      for (var value : material.values()) {
        Message property =
            Identified.of(Property.class, value.property()).isPresent()
                ? Message.of("reference.property-" + value.property())
                : Message.of("listed.as-written", value.property());
        Message words = Message.of("reference.rest-property", property, label(material));
        add(value.sources(), "material", words, href + "#" + value.id());
      }
      Materials.packaged()
          .report(material.id())
          .ifPresent(report -> report.modelInputs().forEach(i -> input(label(material), i, href)));
    }
    for (String id : ToolMaterials.packaged().ids()) {
      var tool = ToolMaterials.packaged().get(id);
      String href = Place.PLOT.path() + "#tool-" + id;
      Message label = Message.of("drawn.tool-" + id);
      tool.inputs().forEach(input -> input(label, input, href));
    }
  }

  private static Message label(Material material) {
    return Message.of("label.material-" + material.id());
  }

  private void input(Message label, ModelInput input, String href) {
    Message property = Message.of("reference.property-" + input.property().id());
    add(input.sources(), "input", Message.of("reference.rest-property", property, label), href);
  }

  private void instruments() {
    String numbers = Place.NUMBERS.path();
    String grit = Place.GRIT.path();
    for (var each : Grits.all()) {
      add(each.provenance(), "grit", Message.of("label.grit-" + each.grit().id()), grit);
    }
    for (var each : BladeCounts.all()) {
      add(each.provenance(), "blades", BladeWords.phrase(each), grit);
    }
    for (var each : Characteristics.all()) {
      add(each.provenance().sources(), "group", each.meaning(), numbers);
    }
    for (var each : Shapes.all()) {
      add(each.provenance(), "shape", Message.of("label.shape-" + each.code()), numbers);
    }
    for (var each : Shanks.all()) {
      add(each.provenance().sources(), "shank", each.name(), numbers);
    }
    for (var each : NominalSizes.all()) {
      add(each.provenance(), "size", Message.of("listed.as-written", each.code()), numbers);
    }
    for (var each : UsSizes.all()) {
      String href = numbers + "?us=" + Written.query(each.number());
      add(each.provenance(), "us", Message.of("reference.rest-us", each.number()), href);
    }
    for (var each : Handpieces.entries()) {
      Message label = Message.of("label.handpiece-" + each.handpiece().id());
      add(each.provenance(), "handpiece", label, Place.HANDPIECES.path());
    }
  }

  private void add(Provenance provenance, String topic, Message words, String href) {
    add(provenance.sources(), topic, words, href);
  }

  private void add(Collection<SourceKey> keys, String topic, Message words, String href) {
    add(keys, new Rest(topic, "", words, href));
  }

  private void add(Collection<SourceKey> keys, String topic, String text, String href) {
    add(keys, new Rest(topic, text, null, href));
  }

  private void add(Collection<SourceKey> keys, Rest rest) {
    for (SourceKey key : keys) {
      bySource.computeIfAbsent(key, k -> new ArrayList<>()).add(rest);
    }
  }

  /** What rests on a source, by topic. */
  public Map<String, List<Rest>> of(SourceKey key) {
    Map<String, List<Rest>> byTopic = new TreeMap<>();
    for (Rest rest : bySource.getOrDefault(key, List.of())) {
      List<Rest> same = byTopic.computeIfAbsent(rest.topic(), t -> new ArrayList<>());
      if (!same.contains(rest)) {
        same.add(rest);
      }
    }
    return byTopic;
  }

  /** How many things rest on a source. */
  public int count(SourceKey key) {
    return of(key).values().stream().mapToInt(List::size).sum();
  }

  /** Keys that are used somewhere. */
  public Collection<SourceKey> used() {
    return bySource.keySet();
  }

  private static final class Packaged {
    static final SourceUses INDEX = new SourceUses();
  }
}
