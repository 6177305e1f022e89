package kerfwright.app.teaching;

import java.time.Clock;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.feature.Feature;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.storage.teaching.Handouts;
import kerfwright.app.template.Templates;

/** Everything to teach with. */
public final class TeachFeature {
  private TeachFeature() {}

  /**
   * What it works with.
   *
   * @param plans cases and their plans
   * @param kept cases to choose from
   * @param handouts where handouts are kept
   * @param ids makes ids
   */
  public record Parts(CasePlans plans, KeptCases kept, Handouts handouts, Supplier<UUID> ids) {}

  public static Feature of(Parts with, Templates templates, Clock clock) {
    Sheets sheets = new Sheets(with.plans());
    return Feature.of(
        new ShowPages(with.plans(), with.kept(), templates),
        new HandoutPages(sheets, with.handouts(), with.ids(), templates, clock));
  }
}
