package kerfwright.app.web.caseform;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.app.casefile.CaseCatalogue;
import kerfwright.app.drawing.CaseMark;
import kerfwright.app.drawing.LayerFill;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Lesion;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.quantity.Identified;

/** What can be chosen in the form of a case. */
public record CaseChoices(
    List<Choice> procedures,
    List<Choice> pulps,
    List<Choice> restorations,
    List<Choice> materials,
    List<Choice> shapes,
    List<Choice> handpieces,
    List<Choice> intended,
    List<Choice> depths,
    List<Choice> activities,
    List<Choice> textures,
    List<Choice> known,
    Map<String, String> marks,
    Map<String, String> fills) {
  /** One option: its id in files and its words. */
  public record Choice(String id, String label) {}

  public static CaseChoices of(Say say, CaseCatalogue catalogue) {
    return new CaseChoices(
        Procedure.all().stream().map(p -> new Choice(p.id(), Labels.procedure(say, p))).toList(),
        Arrays.stream(PulpState.values())
            .map(p -> new Choice(p.id(), Labels.first(Labels.pulp(say, p))))
            .toList(),
        catalogue.restorations().stream()
            .map(id -> new Choice(id, Labels.restoration(say, id)))
            .toList(),
        catalogue.materials().stream()
            .map(m -> new Choice(m.id(), Labels.material(say, m)))
            .toList(),
        Arrays.stream(Outline.Shape.values())
            .map(shape -> new Choice(shape.id(), outline(say, shape)))
            .toList(),
        catalogue.handpieces().stream().map(h -> new Choice(h.id(), handpiece(say, h))).toList(),
        said(say, "label.intended-", catalogue.intended()),
        said(say, "case.lesion-", Identified.ids(Lesion.Depth.class)),
        said(say, "case.lesion-", Identified.ids(Lesion.Activity.class)),
        said(say, "case.lesion-", Identified.ids(Lesion.Texture.class)),
        said(say, "case.known-", Known.ids()),
        marks(catalogue),
        LayerFill.of(catalogue.materials()));
  }

  /** A small drawing for each restoration. */
  private static Map<String, String> marks(CaseCatalogue catalogue) {
    Map<String, Material> known =
        catalogue.materials().stream().collect(Collectors.toMap(Material::id, m -> m));
    Map<String, String> marks = new HashMap<>();
    for (String id : catalogue.restorations()) {
      List<String> by = UsualStacks.packaged().knownBy(id);
      Material outer = by.isEmpty() ? null : known.get(by.get(0).split("\\|")[0]);
      marks.put(id, CaseMark.restoration(id, outer));
    }
    return marks;
  }

  /** Which pattern and ground each material has, for the script that draws the layers. */
  public String fillsText() {
    return fills.entrySet().stream()
        .map(one -> one.getKey() + " " + one.getValue())
        .sorted()
        .collect(Collectors.joining(";"));
  }

  private static List<Choice> said(Say say, String key, List<String> ids) {
    return ids.stream().map(id -> new Choice(id, say.at(key + id))).toList();
  }

  /** The restorations a procedure may prepare for; none while it is not chosen. */
  public List<Choice> intendedFor(String procedure) {
    List<String> ids = UsualStacks.packaged().procedure(procedure).intended();
    return intended.stream().filter(one -> ids.contains(one.id())).toList();
  }

  /** Whether a procedure asks for the decay. */
  public boolean asksLesion(String procedure) {
    return UsualStacks.packaged().procedure(procedure).lesion();
  }

  /** Whether a procedure opens the chamber, so that its depth matters. */
  public boolean asksChamber(String procedure) {
    return procedures.stream().anyMatch(one -> one.id().equals(procedure))
        && new Procedure(procedure).opensChamber();
  }

  private static String outline(Say say, Outline.Shape shape) {
    String name = Labels.first(Labels.outline(say, shape));
    return shape.walled() ? name : say.at("case.open-surface", name);
  }

  private static String handpiece(Say say, Handpiece handpiece) {
    return say.at(
        "case.handpiece", Labels.handpiece(say, handpiece), Labels.shank(say, handpiece.shank()));
  }

  /** Which arch is shown first: 0 upper, 1 lower, 2 and 3 the primary ones. */
  public int jaw(String picked) {
    if (!picked.matches("[1-8][1-8]")) {
      return 0;
    }
    int quadrant = picked.charAt(0) - '1';
    return quadrant % 4 / 2 + (quadrant > 3 ? 2 : 0);
  }

  /** FDI numbers of one row of the arch picker, left to right as one looks at the patient. */
  public List<Integer> arch(boolean upper, boolean primary) {
    int right = (upper ? 1 : 4) + (primary ? 4 : 0);
    int left = (upper ? 2 : 3) + (primary ? 4 : 0);
    int last = primary ? 5 : 8;
    List<Integer> teeth = new java.util.ArrayList<>();
    for (int position = last; position >= 1; position--) {
      teeth.add(right * 10 + position);
    }
    for (int position = 1; position <= last; position++) {
      teeth.add(left * 10 + position);
    }
    return teeth;
  }
}
