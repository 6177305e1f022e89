package kerfwright.app.web;

import io.javalin.config.JavalinConfig;
import java.time.Clock;
import kerfwright.app.backup.BackupPages;
import kerfwright.app.label.ItemLabels;
import kerfwright.app.label.LabelPages;
import kerfwright.app.label.LabelSource;
import kerfwright.app.label.ScanPages;
import kerfwright.app.label.ScanTargets;
import kerfwright.app.template.Templates;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.label.OwnCode;

/** The pages around the drawer and the record: scanning, labels, backup. */
final class AroundPages {
  private final ScanPages scans;
  private final LabelPages labels;
  private final BackupPages backup;

  AroundPages(OpenPractice open, Templates templates, Clock clock) {
    Drawer drawer = open.desk().drawer();
    this.scans = new ScanPages(drawer, open.packages(), new ScanTargets(drawer), templates, clock);
    LabelSource source = new LabelSource().with(OwnCode.Kind.INSTRUMENT, new ItemLabels(drawer));
    this.labels = new LabelPages(source, open.settings(), templates);
    this.backup =
        new BackupPages(open.backups(), open.database(), open.settings(), templates, clock);
  }

  void routes(JavalinConfig config) {
    scans.routes(config);
    labels.routes(config);
    backup.routes(config);
  }
}
