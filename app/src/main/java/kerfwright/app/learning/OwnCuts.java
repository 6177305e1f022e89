package kerfwright.app.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kerfwright.app.storage.StoredDocument;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Materials;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.uncertainty.SlotCut;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.learning.LoggedCut;
import kerfwright.practice.learning.OwnCut;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/** The practice's measured cuts, each kept as a setting of its own. */
public record OwnCuts(Settings settings, Drawer drawer) {
  private static final String PREFIX = "own-cut.";

  /** Every measured cut by its number, oldest first. */
  Map<Integer, OwnCut> all(SettingValues set) {
    Map<Integer, OwnCut> all = new TreeMap<>();
    set.values()
        .forEach(
            (name, value) -> {
              if (name.matches("own-cut\\.\\d{1,6}")) {
                all.put(
                    Integer.valueOf(name.substring(PREFIX.length())),
                    StoredDocument.OWN_CUT.read(value, OwnCut.class));
              }
            });
    return all;
  }

  /** Keeps a cut; false when somebody else changed a setting meanwhile. */
  public boolean keep(int version, OwnCut cut) {
    int next = all(settings.read()).keySet().stream().mapToInt(n -> n + 1).max().orElse(1);
    return settings.write(version, Map.of(PREFIX + next, StoredDocument.OWN_CUT.text(cut)));
  }

  /** Forgets a cut; false when somebody else changed a setting meanwhile. */
  boolean forget(int version, int number) {
    return settings.write(version, Map.of(PREFIX + number, ""));
  }

  /** All slots against what the models say of them. */
  List<LoggedCut> against(SettingValues set) {
    List<LoggedCut> cuts = new ArrayList<>();
    all(set).values().forEach(cut -> models(cut).ifPresent(m -> cuts.addAll(cut.against(m))));
    return cuts;
  }

  /** What the models say of a cut; empty where they do not know its instrument. */
  Optional<SlotCut> models(OwnCut cut) {
    var handpiece = Handpieces.byId(cut.handpieceId());
    var material = Materials.packaged().find(cut.materialId());
    if (handpiece.isEmpty() || material.isEmpty()) {
      return Optional.empty();
    }
    return drawer
        .find(cut.item())
        .flatMap(item -> instrument(item, cut.uses(), cut.sterilisations()))
        .map(
            instrument ->
                new SlotCut(
                    instrument,
                    handpiece.get(),
                    material.get(),
                    cut.loadN(),
                    cut.waterMlPerMin(),
                    cut.engagedMm()));
  }

  /** What of the drawer cuts, after so many uses; empty where its working part is not known. */
  static Optional<Instrument> instrument(StockItem item, int uses, int sterilisations) {
    return Optional.of(item)
        .filter(StockItem::isRotary)
        .map(
            one ->
                Instrument.of(
                    new DrawerInstrument(
                        one.label(),
                        one.properties(),
                        uses,
                        sterilisations,
                        DrawerInstrument.State.CLEAN)));
  }
}
