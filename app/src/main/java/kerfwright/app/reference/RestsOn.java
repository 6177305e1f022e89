package kerfwright.app.reference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.caution.Cautions;
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
import kerfwright.catalogue.material.ToolMaterials;
import kerfwright.catalogue.number.UsSizes;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.stack.Anatomy;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.planner.rule.EvidenceRules;
import kerfwright.quantity.SourceKey;

/** What rests on each source, over every table of the catalogue and every rule of the planner. */
public final class RestsOn {
  /**
   * One thing that rests on a source.
   *
   * @param topic kind of thing
   * @param text what it is
   * @param href where it is shown, or empty
   */
  public record Rest(String topic, String text, String href) {}

  private final Map<SourceKey, List<Rest>> bySource = new TreeMap<>();

  private RestsOn() {
    materials();
    instruments();
    for (var row : Evidence.packaged().all()) {
      add(row.sources(), "Published finding", row.sentence(), findingHref(row.id()));
    }
    for (var limit : SafetyLimits.packaged().all()) {
      add(limit.sources(), "Limit", limit.quantity(), Place.LIMITS.path() + "#" + limit.id());
    }
    for (var caution : Cautions.packaged().all()) {
      add(caution.sources(), "Caution", caution.text(), Place.LIMITS.path() + "#" + caution.id());
    }
    for (var row : Anatomy.packaged().teeth()) {
      String text = row.tooth() + ", " + row.quantity() + ": " + row.landmark();
      add(row.sources(), "Dimension of teeth", text, Place.LAYERS.path() + "#" + row.id());
    }
    for (var row : Anatomy.packaged().restorations()) {
      String text = row.restoration() + ": " + row.site();
      add(row.sources(), "Restoration", text, Place.LAYERS.path() + "#" + row.id());
    }
    for (var figure : ReprocessingFigures.packaged().all()) {
      String text = Written.spaced(figure.quantity()) + ": " + figure.item();
      add(figure.sources(), "Reprocessing", text, "");
    }
    for (var rule : EvidenceRules.all()) {
      String text = Say.in(Language.ENGLISH).of(rule.message());
      add(rule.sources(), "Rule of the planner", text, Place.EVIDENCE.path() + "#rules");
    }
    String notation = "FDI, Universal and Palmer notation";
    add(ToothNotation.SOURCES, "Teeth", notation, Place.TEETH.path());
  }

  /** The packaged catalogue, read once. */
  public static RestsOn packaged() {
    return Packaged.INDEX;
  }

  private static String findingHref(String id) {
    return Place.EVIDENCE.path() + "#" + id;
  }

  private void materials() {
    for (Material material : Materials.packaged().all()) {
      String href = Written.material(material.id());
      for (var value : material.values()) {
        String text = material.label() + ": " + Written.property(value.property());
        add(value.sources(), "Material", text, href + "#" + value.id());
      }
      Materials.packaged()
          .report(material.id())
          .ifPresent(report -> report.modelInputs().forEach(i -> input(material.label(), i, href)));
    }
    for (String id : ToolMaterials.packaged().ids()) {
      var tool = ToolMaterials.packaged().get(id);
      String href = Place.PLOT.path() + "#tool-" + id;
      tool.inputs().forEach(input -> input(tool.label(), input, href));
    }
  }

  private void input(String label, ModelInput input, String href) {
    String text = label + ": " + input.property().label();
    add(input.sources(), "What the models take", text, href);
  }

  private void instruments() {
    String numbers = Place.NUMBERS.path();
    String grit = Place.GRIT.path();
    Grits.all().forEach(each -> add(each.provenance(), "Grit class", each.grit().label(), grit));
    BladeCounts.all()
        .forEach(each -> add(each.provenance(), "Blade count", each.usualRole(), grit));
    Characteristics.all()
        .forEach(each -> add(each.provenance(), "Number group", each.meaning(), numbers));
    Shapes.all().forEach(each -> add(each.provenance(), "Shape", each.name(), numbers));
    Shanks.all().forEach(each -> add(each.provenance(), "Shank", each.name(), numbers));
    NominalSizes.all()
        .forEach(each -> add(each.provenance(), "Nominal size", each.code(), numbers));
    UsSizes.all()
        .forEach(
            each ->
                add(
                    each.provenance(),
                    "US size",
                    "No. " + each.number(),
                    numbers + "?us=" + Written.query(each.number())));
    Handpieces.entries()
        .forEach(
            each ->
                add(
                    each.provenance(),
                    "Handpiece",
                    each.handpiece().label(),
                    Place.HANDPIECES.path()));
  }

  private void add(Provenance provenance, String topic, String text, String href) {
    add(provenance.sources(), topic, text, href);
  }

  private void add(Collection<SourceKey> keys, String topic, String text, String href) {
    for (SourceKey key : keys) {
      bySource.computeIfAbsent(key, k -> new ArrayList<>()).add(new Rest(topic, text, href));
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

  /** One line on what a source is. */
  public static String citation(SourceKey key) {
    if (key.equals(SourceKey.COMMON_PRACTICE)) {
      return "Common practice: a fact of the trade for which no source is known.";
    }
    return Sources.packaged().find(key).map(s -> s.citation()).orElse("Not in the register.");
  }

  private static final class Packaged {
    static final RestsOn INDEX = new RestsOn();
  }
}
