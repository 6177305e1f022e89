package kerfwright.app.learner;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Handler;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import kerfwright.app.Wiring;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.storage.teaching.Lessons;
import kerfwright.app.template.Templates;

/** Everything for learners: choosing in a case, question sets, own questions, progress, a class. */
public final class LearnerPages implements Feature {
  /**
   * What the pages work with.
   *
   * @param lessons own questions, sets and answers
   * @param newId ids ordered by time
   * @param clock the time
   * @param address where phones of the network reach this machine
   * @param files serves a file of the pages by its name
   */
  public record Parts(
      Lessons lessons,
      Supplier<UUID> newId,
      Clock clock,
      Supplier<Optional<String>> address,
      Handler files) {}

  private final Feature pages;
  private final ClassDoor door;
  private final Parts with;
  private final Templates templates;

  public LearnerPages(Wiring wiring, Parts with, Templates templates) {
    this.with = with;
    this.templates = templates;
    this.door = new ClassDoor(templates, with.files());
    this.pages =
        Feature.of(
            new ChoosePages(new LessonCases(wiring.demoCases(), wiring.demoDrawer()), templates),
            new SetPages(with, templates),
            new OwnPages(with, templates),
            new ProgressPages(with, templates),
            new ClassPages(with, templates, door));
  }

  /** An address other machines of the network reach this one by. */
  public static Optional<String> networkAddress() {
    return ClassDoor.networkAddress();
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get(
        "/learn",
        call ->
            templates.html(
                call,
                "learner/start.jte",
                Map.of(
                    "running", door.now().isPresent(),
                    "own", with.lessons().questions().size(),
                    "aliases", with.lessons().aliases().size())),
        Access.SEE);
    pages.routes(config);
    config.events.serverStopping(door::close);
  }

  @Override
  public List<String> pages() {
    return Stream.concat(Stream.of("/learn"), pages.pages().stream()).toList();
  }
}
