package kerfwright.app.web;

import java.time.Clock;
import java.util.Map;
import kerfwright.app.backup.BackupPages;
import kerfwright.app.daypage.TrayLabels;
import kerfwright.app.feature.Feature;
import kerfwright.app.label.Coded;
import kerfwright.app.label.ItemLabels;
import kerfwright.app.label.LabelPages;
import kerfwright.app.label.ScanPages;
import kerfwright.app.label.WordSearch;
import kerfwright.app.learning.LearningPages;
import kerfwright.app.learning.PlannedSteps;
import kerfwright.app.reprocessing.LoadLabels;
import kerfwright.app.restock.RestockPages;
import kerfwright.app.restock.RestockService;
import kerfwright.app.template.Templates;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.Loads;

/** The pages around the drawer and the record: scanning, labels, backup, restock, our own pace. */
final class StockPages {
  private StockPages() {}

  static Feature of(OpenPractice open, Templates templates, Clock clock) {
    Drawer drawer = open.service().drawer();
    Loads loads = open.loads().loads();
    Map<OwnCode.Kind, Coded> coded = coded(drawer, loads, open.days());
    ScanPages scans =
        new ScanPages(
            drawer,
            open.packages(),
            coded,
            new WordSearch(drawer, open.keptCases(), open.record().record(), loads),
            templates,
            clock);
    PlannedSteps planned = new PlannedSteps(open.runs());
    RestockService needs =
        new RestockService(
            drawer,
            open.packages(),
            open.record().record(),
            planned::procedure,
            open.days(),
            open.requests(),
            item -> open.learning().get().wear(item.properties().kind()).typical(),
            clock);
    return Feature.of(
        scans,
        new LabelPages(coded, open.settings(), templates),
        new BackupPages(open.backups(), open.database(), open.settings(), templates, clock),
        new RestockPages(needs, templates),
        new LearningPages(open.learning(), drawer, open.settings(), templates, clock));
  }

  /** A pouch leads to its load: there stands whether it was released. A tray leads to its day. */
  private static Map<OwnCode.Kind, Coded> coded(Drawer drawer, Loads loads, DayBooks days) {
    ItemLabels items = new ItemLabels(drawer);
    TrayLabels trays = new TrayLabels(days);
    LoadLabels ofLoads = new LoadLabels(loads);
    return Map.of(
        OwnCode.Kind.INSTRUMENT, new Coded(items::label, items::page),
        OwnCode.Kind.TRAY, new Coded(trays::label, trays::page),
        OwnCode.Kind.LOAD, new Coded(ofLoads::load, id -> loads.find(id).map(StockPages::page)),
        OwnCode.Kind.POUCH,
            new Coded(ofLoads::pouch, id -> loads.holding(id).map(StockPages::page)));
  }

  private static String page(Load load) {
    return "/reprocessing/load/" + load.id() + "?scanned=1";
  }
}
