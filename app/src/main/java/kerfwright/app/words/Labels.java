package kerfwright.app.words;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.piece.PieceKind;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.Stroke;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Finding;

/** What things of the catalogue, the planner and the drawer are called, by their ids. */
public final class Labels {
  private static final Map<String, String> SHAPE_BY_NAME = shapesByName();

  private Labels() {}

  public static String material(Say say, Material material) {
    return material(say, material.id());
  }

  public static String material(Say say, String materialId) {
    return say.at("label.material-" + materialId);
  }

  /** The material as it stands within a sentence. */
  public static String materialWithin(Say say, String materialId) {
    return within(say, material(say, materialId));
  }

  public static String restoration(Say say, String restorationId) {
    return say.at("label.restoration-" + restorationId);
  }

  public static String kind(Say say, InstrumentKind kind) {
    return say.at("label.kind-" + kind.id());
  }

  public static String shape(Say say, InstrumentShape shape) {
    return shape(say, shape.name());
  }

  public static String shape(Say say, ShapeFamily family) {
    return say.at("label.shape-" + family.id());
  }

  /**
   * A shape by the catalogue's name of it; or by that of the US sizes; one it does not have stays
   * as it is.
   */
  public static String shape(Say say, String shapeName) {
    String id = SHAPE_BY_NAME.get(shapeName);
    if (id != null) {
      return say.at("label.shape-" + id);
    }
    String us = "label.us-shape-" + slug(shapeName.replaceAll("[^A-Za-z]+", " ").strip());
    return say.has(us) ? say.at(us) : shapeName;
  }

  public static String grit(Say say, GritClass grit) {
    return say.at("label.grit-" + grit.id());
  }

  public static String ring(Say say, GritClass grit) {
    return ring(say, grit.ring());
  }

  /** A ring colour by its English word or words. */
  public static String ring(Say say, String colour) {
    return say.at("label.ring-" + slug(colour));
  }

  public static String shank(Say say, ShankType shank) {
    return say.at("label.shank-" + slug(shank.name()));
  }

  public static String handpiece(Say say, Handpiece handpiece) {
    return say.at("label.handpiece-" + handpiece.id());
  }

  public static String stroke(Say say, Stroke stroke) {
    return say.at("label.stroke-" + stroke.id());
  }

  public static String procedure(Say say, Procedure procedure) {
    String key = "label.procedure-" + procedure.id();
    // one a practice added without words is called by its id
    return say.has(key) ? say.at(key) : procedure.id().replace('-', ' ');
  }

  /** The procedure as it stands within a sentence. */
  public static String procedureWithin(Say say, Procedure procedure) {
    return within(say, procedure(say, procedure));
  }

  public static String pulp(Say say, PulpState pulp) {
    return say.at("label.pulp-" + pulp.id());
  }

  /** A tool that does not turn, or not as a bur does. */
  public static String tool(Say say, String id) {
    return say.at("operation.tool-" + id);
  }

  /** What was used as the record names it: the kind of a piece in words, all else as it stands. */
  public static String used(Say say, String what) {
    return PieceKinds.byId(what).map(kind -> piece(say, kind)).orElse(what);
  }

  /** One of these kinds of pieces. */
  public static String need(Say say, List<String> kinds) {
    return kinds.stream()
        .map(id -> PieceKinds.byId(id).map(kind -> piece(say, kind)).orElse(id))
        .collect(Collectors.joining(" / "));
  }

  /** A piece that is no rotary instrument. */
  public static String piece(Say say, PieceKind kind) {
    return kind.sort() == PieceKind.Sort.HANDPIECE
        ? say.at("label.piece-" + kind.id())
        : tool(say, kind.id());
  }

  public static String outline(Say say, Outline.Shape shape) {
    return say.at("label.outline-" + shape.id());
  }

  /** The system teeth are named in here. */
  public static String teeth(Say say) {
    return say.at("label.teeth-" + say.teeth().id());
  }

  public static String state(Say say, InstrumentState state) {
    return say.at("label.state-" + state.id());
  }

  /** How sure a fact is, in a word or two. */
  public static String basis(Say say, Basis basis) {
    return say.at("label.basis-" + slug(basis.name()));
  }

  /** How sure a fact is, so that a stranger understands it. */
  public static String basisMeaning(Say say, Basis basis) {
    return say.at("label.meaning-" + slug(basis.name()));
  }

  public static String severity(Say say, Finding finding) {
    return say.at("label.severity-" + finding.severity().label());
  }

  /** A label with a capital at the beginning, as a list or a heading begins. */
  public static String first(String label) {
    return label.isEmpty()
        ? label
        : label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
  }

  /**
   * A label as it stands within a sentence: it begins small there, save abbreviations and where
   * nouns have capitals.
   */
  static String within(Say say, String label) {
    boolean word = label.length() > 1 && Character.isLowerCase(label.charAt(1));
    return word && !say.language().capitalNouns()
        ? Character.toLowerCase(label.charAt(0)) + label.substring(1)
        : label;
  }

  private static String slug(String words) {
    return words.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
  }

  private static Map<String, String> shapesByName() {
    Map<String, String> ids = new HashMap<>();
    for (InstrumentShape shape : Shapes.all()) {
      ids.put(shape.name(), shape.code());
    }
    for (ShapeFamily family : ShapeFamily.values()) {
      ids.put(family.label(), family.id());
    }
    return Map.copyOf(ids);
  }
}
