package kerfwright.app.setting;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Remembered;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Language;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/** Language, figures, look and the people of the practice. */
public final class SettingPages implements Feature {
  private static final String THEME = "theme";
  private static final Set<String> THEMES = Set.of("auto", "light", "dark");
  private static final Set<String> MARKS = Set.of("", "point", "comma");
  private static final Set<String> TEETH = Set.of("fdi", "universal", "palmer");
  private static final Duration A_YEAR = Duration.ofDays(365);

  private final Settings settings;
  private final Templates templates;

  public SettingPages(Settings settings, Templates templates) {
    this.settings = settings;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/settings", call -> show(call, settings.read(), ""), Access.SEE);
    config.routes.post("/settings/look", this::look, Access.SET);
    config.routes.get("/theme.css", call -> look(call, theme(call)), Access.OPEN);
  }

  @Override
  public List<String> pages() {
    return List.of("/settings");
  }

  private void show(Context call, SettingValues set, String fault) {
    String theme = theme(call);
    templates.html(
        call,
        "setting/settings.jte",
        Map.of(
            "set", set,
            "theme", theme,
            "fault", fault,
            "done", call.queryParam("done") != null));
  }

  private void look(Context call) {
    Map<String, String> changed = new LinkedHashMap<>();
    String language = Sent.text(call, "language");
    if (language.isEmpty() || Language.byId(language).isPresent()) {
      changed.put("language", language);
    }
    String decimal = Sent.text(call, "decimal");
    if (MARKS.contains(decimal)) {
      changed.put("decimal", decimal);
    }
    String teeth = Sent.text(call, "teeth");
    if (TEETH.contains(teeth)) {
      changed.put("teeth", teeth);
    }
    String theme = Sent.text(call, THEME);
    if (THEMES.contains(theme)) {
      Remembered.keep(call, THEME, theme, A_YEAR);
    }
    written(call, changed);
  }

  private void written(Context call, Map<String, String> changed) {
    if (settings.write(Sent.version(call), changed)) {
      call.redirect("/settings?done=1", HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    show(call, settings.read(), "setting.changed-elsewhere");
  }

  private static String theme(Context call) {
    return Optional.of(Remembered.of(call, THEME)).filter(THEMES::contains).orElse("auto");
  }

  /** One rule, so that a device keeps its own look. */
  private static void look(Context call, String theme) {
    call.header("Cache-Control", "private, no-cache");
    call.contentType("text/css; charset=utf-8")
        .result(
            theme.equals("auto") ? "" : "@media screen { :root { color-scheme: " + theme + "; } }");
  }
}
