package kerfwright.app.web;

import java.time.Clock;
import kerfwright.app.backup.BackupPages;
import kerfwright.app.daypage.TrayLabels;
import kerfwright.app.feature.Feature;
import kerfwright.app.label.ItemLabels;
import kerfwright.app.label.LabelPages;
import kerfwright.app.label.LabelSource;
import kerfwright.app.label.ScanPages;
import kerfwright.app.label.ScanTargets;
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
    ScanPages scans =
        new ScanPages(
            drawer,
            open.packages(),
            targets(drawer, loads, open.days()),
            new WordSearch(drawer, open.keptCases(), open.record().record(), loads),
            templates,
            clock);
    TrayLabels trays = new TrayLabels(open.days());
    LoadLabels ofLoads = new LoadLabels(loads);
    LabelSource source =
        new LabelSource()
            .with(OwnCode.Kind.INSTRUMENT, new ItemLabels(drawer))
            .with(OwnCode.Kind.POUCH, ofLoads::pouch)
            .with(OwnCode.Kind.LOAD, ofLoads::load)
            .with(OwnCode.Kind.TRAY, trays::label);
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
        new LabelPages(source, open.settings(), templates),
        new BackupPages(open.backups(), open.database(), open.settings(), templates, clock),
        new RestockPages(needs, templates),
        new LearningPages(open.learning(), drawer, open.settings(), templates, clock));
  }

  /** A pouch leads to its load: there stands whether it was released. A tray leads to its day. */
  private static ScanTargets targets(Drawer drawer, Loads loads, DayBooks days) {
    return new ScanTargets(drawer)
        .with(OwnCode.Kind.TRAY, new TrayLabels(days)::page)
        .with(OwnCode.Kind.LOAD, id -> loads.find(id).map(StockPages::page))
        .with(OwnCode.Kind.POUCH, id -> loads.holding(id).map(StockPages::page));
  }

  private static String page(Load load) {
    return "/reprocessing/load/" + load.id() + "?scanned=1";
  }
}
