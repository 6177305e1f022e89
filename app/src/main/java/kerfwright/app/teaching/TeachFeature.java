package kerfwright.app.teaching;

import io.javalin.config.JavalinConfig;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import kerfwright.app.feature.Feature;
import kerfwright.app.plan.PlanDrawings;
import kerfwright.app.security.Access;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.storage.teaching.Handouts;
import kerfwright.app.template.Templates;

/** Everything to teach with, and the page that leads to it. */
public final class TeachFeature implements Feature {
  /**
   * What it works with.
   *
   * @param plans cases and their plans
   * @param kept cases to choose from
   * @param handouts where handouts are kept
   * @param ids makes ids
   * @param drawings draws plans
   */
  public record Parts(
      CasePlans plans,
      KeptCases kept,
      Handouts handouts,
      Supplier<UUID> ids,
      PlanDrawings drawings) {}

  private final Templates templates;
  private final List<Card> cards;
  private final Feature parts;

  public TeachFeature(Parts with, Templates templates, Clock clock) {
    this.templates = templates;
    this.cards = Cards.all();
    Sheets sheets = new Sheets(with.plans(), with.drawings());
    this.parts =
        Feature.of(
            new ShowPages(templates),
            new ComparePages(with.plans(), with.kept(), templates),
            new HandoutPages(sheets, with.handouts(), with.ids(), templates, clock));
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get(
        "/teach",
        call -> templates.html(call, "teaching/start.jte", Map.of("cards", cards)),
        Access.SEE);
    config.routes.get(
        "/teach/claims", call -> templates.html(call, "teaching/claims.jte", Map.of()), Access.SEE);
    parts.routes(config);
  }

  @Override
  public List<String> pages() {
    return Stream.concat(Stream.of("/teach", "/teach/claims"), parts.pages().stream()).toList();
  }
}
