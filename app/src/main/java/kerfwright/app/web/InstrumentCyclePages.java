package kerfwright.app.web;

import java.time.Clock;
import kerfwright.app.feature.Feature;
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
  private InstrumentCyclePages() {}

  /**
   * @param loadsChanged told whenever a load was started or failed
   */
  static Feature of(OpenPractice open, Runnable loadsChanged, Templates templates, Clock clock) {
    Drawer drawer = open.service().drawer();
    Settings settings = open.settings();
    LoadService service = open.loads();
    return Feature.of(
        new ReprocessingPages(open.service(), service, settings, templates, clock),
        new LoadPages(drawer, service, settings, templates, clock, loadsChanged),
        new ProcessingSettingPages(settings, templates),
        // before the records, whose addresses end in any id
        new EntryPages(open.record(), drawer, settings, templates, clock),
        new RecordPages(
            open.record().record(), open.keptCases(), drawer, service.loads(), templates, clock));
  }
}
