package kerfwright.planner;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.Aim;
import kerfwright.planner.casework.AtHand;
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.Condition;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Lesion;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** Builds cases for tests, layer by layer. */
final class ACase {
  private final Procedure procedure;
  private final List<Layer> layers = new ArrayList<>();
  private PulpState pulp = PulpState.VITAL;
  private @Nullable Keep keep;
  private @Nullable Length finish;
  private Outline outline =
      new Outline(Outline.Shape.ELLIPSE, Length.ofMillimetres(4), Length.ofMillimetres(3));
  private double water = 50;
  private int fdi = 16;
  private @Nullable String restoration;
  private @Nullable String intended;
  private @Nullable Lesion lesion;
  private @Nullable ChamberDepth chamber;
  private List<String> handpieces = List.of("turbine", "electric-1to5", "electric-1to1");

  private ACase(Procedure procedure) {
    this.procedure = procedure;
  }

  static ACase of(Procedure procedure) {
    return new ACase(procedure);
  }

  ACase layer(String material, double mm) {
    return layer(material, mm, mm, mm);
  }

  ACase layer(String material, double low, double typical, double high) {
    layers.add(
        new Layer(
            Materials.packaged().get(material),
            new Range<>(
                Length.ofMillimetres(low),
                Length.ofMillimetres(typical),
                Length.ofMillimetres(high))));
    return this;
  }

  ACase pulp(PulpState state) {
    pulp = state;
    return this;
  }

  ACase keep(String material, double mm) {
    keep = new Keep(material, Length.ofMillimetres(mm));
    return this;
  }

  ACase keepAll(String material) {
    keep = new Keep(material, null);
    return this;
  }

  ACase finish(double raUm) {
    finish = Length.ofMicrometres(raUm);
    return this;
  }

  ACase outline(Outline.Shape shape, double length, double width) {
    outline = new Outline(shape, Length.ofMillimetres(length), Length.ofMillimetres(width));
    return this;
  }

  ACase water(double mlPerMin) {
    water = mlPerMin;
    return this;
  }

  ACase handpieces(String... ids) {
    handpieces = List.of(ids);
    return this;
  }

  ACase tooth(int number) {
    fdi = number;
    return this;
  }

  ACase restoration(String id) {
    restoration = id;
    return this;
  }

  ACase intended(String id) {
    intended = id;
    return this;
  }

  ACase deepDecay() {
    lesion = new Lesion(Lesion.Depth.DEEP, Lesion.Activity.ACTIVE, null);
    return this;
  }

  /** The chamber as read on a film. */
  ACase chamberOnFilm(double mm, double error) {
    chamber =
        new ChamberDepth(
            new Range<>(
                Length.ofMillimetres(mm - error),
                Length.ofMillimetres(mm),
                Length.ofMillimetres(mm + error)),
            Known.FILM);
    return this;
  }

  CutCase build() {
    return new CutCase(
        "K-0001",
        procedure,
        new Tooth(fdi),
        new Condition(pulp, restoration, lesion, layers, chamber),
        new Aim(intended, outline, keep, finish),
        new AtHand(
            handpieces.stream().map(id -> Handpieces.byId(id).orElseThrow()).toList(),
            FlowRate.ofMillilitresPerMinute(water)),
        List.of());
  }
}
