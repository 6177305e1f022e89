package kerfwright.app.learner;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Handler;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.Wiring;
import kerfwright.app.security.Role;
import kerfwright.app.template.Templates;
import kerfwright.practice.teaching.Lessons;

/** Everything for learners: choosing in a case, question sets, own questions, progress, a class. */
public final class LearnerPages {
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

  private final ChoosePages choose;
  private final SetPages sets;
  private final OwnPages own;
  private final ProgressPages progress;
  private final ClassPages classes;
  private final ClassDoor door;
  private final Parts with;
  private final Templates templates;

  public LearnerPages(Wiring wiring, Parts with, Templates templates) {
    this.with = with;
    this.templates = templates;
    this.door = new ClassDoor(templates, with.files());
    this.choose =
        new ChoosePages(new LessonCases(wiring.demoCases(), wiring.demoDrawer()), templates);
    this.sets = new SetPages(with, templates);
    this.own = new OwnPages(with, templates);
    this.progress = new ProgressPages(with, templates);
    this.classes = new ClassPages(with, templates, door);
  }

  /** An address other machines of the network reach this one by. */
  public static Optional<String> networkAddress() {
    return ClassDoor.networkAddress();
  }

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
        Role.LOCAL);
    choose.routes(config);
    sets.routes(config);
    own.routes(config);
    progress.routes(config);
    classes.routes(config);
    config.events.serverStopping(door::close);
  }
}
