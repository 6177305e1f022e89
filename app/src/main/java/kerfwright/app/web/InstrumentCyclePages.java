package kerfwright.app.web;

import io.javalin.config.JavalinConfig;
import java.time.Clock;
import kerfwright.app.record.EntryPages;
import kerfwright.app.record.RecordPages;
import kerfwright.app.reprocessing.LoadPages;
import kerfwright.app.reprocessing.ProcessingSettingPages;
import kerfwright.app.reprocessing.ReprocessingPages;
import kerfwright.app.template.Templates;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.reprocessing.LoadService;
import kerfwright.practice.setting.Settings;

/** The round of an instrument: reprocessing, and the record of its uses. */
final class InstrumentCyclePages {
  private final ReprocessingPages reprocessing;
  private final LoadPages loads;
  private final ProcessingSettingPages processing;
  private final RecordPages records;
  private final EntryPages entries;

  /**
   * @param loadsChanged told whenever a load was started or failed
   */
  InstrumentCyclePages(OpenPractice open, Runnable loadsChanged, Templates templates, Clock clock) {
    Drawer drawer = open.service().drawer();
    Settings settings = open.settings();
    LoadService service = open.loads();
    this.reprocessing = new ReprocessingPages(open.service(), service, settings, templates, clock);
    this.loads = new LoadPages(drawer, service, settings, templates, clock, loadsChanged);
    this.processing = new ProcessingSettingPages(settings, templates);
    this.records =
        new RecordPages(
            open.record().record(), open.keptCases(), drawer, service.loads(), templates, clock);
    this.entries = new EntryPages(open.record(), drawer, settings, templates, clock);
  }

  void routes(JavalinConfig config) {
    reprocessing.routes(config);
    loads.routes(config);
    processing.routes(config);
    // before the records, whose addresses end in any id
    entries.routes(config);
    records.routes(config);
  }
}
