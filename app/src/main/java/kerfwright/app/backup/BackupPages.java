package kerfwright.app.backup;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.storage.Database;
import kerfwright.app.template.Templates;
import kerfwright.practice.setting.Settings;
import org.jspecify.annotations.Nullable;

/** The backups there are, when the next is made, and the export. */
public final class BackupPages implements Feature {
  private final @Nullable Backups backups;
  private final Database database;
  private final Settings settings;
  private final Templates templates;
  private final Clock clock;

  /**
   * @param backups null where nothing is kept beyond the end of the program
   */
  public BackupPages(
      @Nullable Backups backups,
      Database database,
      Settings settings,
      Templates templates,
      Clock clock) {
    this.backups = backups;
    this.database = database;
    this.settings = settings;
    this.templates = templates;
    this.clock = clock;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/backup", call -> show(call, typed(), List.of(), ""), Access.OWN);
    config.routes.post("/backup/now", this::now, Access.OWN);
    config.routes.post("/backup/plan", this::keepPlan, Access.OWN);
    config.routes.post("/backup/export", this::export, Access.OWN);
  }

  @Override
  public List<String> pages() {
    return List.of("/backup");
  }

  private Map<String, String> typed() {
    var set = settings.read();
    BackupPlan plan = backups == null ? BackupPlan.of(set, null) : backups.plan();
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("folder", plan.folder() == null ? "" : plan.folder().toString());
    typed.put("time", plan.at().toString());
    typed.put("daily", Integer.toString(plan.daily()));
    typed.put("weekly", Integer.toString(plan.weekly()));
    return typed;
  }

  private void show(Context call, Map<String, String> typed, List<String> faults, String said) {
    Map<String, Object> values = new HashMap<>();
    boolean running = backups != null && backups.running();
    if (running) {
      // works without script: the browser asks again
      call.header("Refresh", "2");
    }
    values.put("kept", backups != null);
    values.put("running", running);
    values.put("files", backups == null ? List.of() : backups.files());
    values.put("ahead", backups == null ? 0 : backups.ahead());
    values.put("fault", backups == null ? null : backups.fault());
    values.put("key", backups == null ? "" : backups.key());
    values.put("roots", backups == null ? "" : backups.roots().shown());
    values.put("version", settings.read().version());
    values.put("typed", typed);
    values.put("faults", faults);
    values.put("said", said);
    templates.html(call, "backup/backup.jte", values);
  }

  private void now(Context call) {
    if (backups != null) {
      backups.request();
    }
    call.redirect("/backup", HttpStatus.SEE_OTHER);
  }

  private void keepPlan(Context call) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String name : List.of("folder", "time", "daily", "weekly")) {
      typed.put(name, Optional.ofNullable(call.formParam(name)).orElse("").strip());
    }
    List<String> faults = faults(typed);
    Optional<Path> folder = BackupPlan.folder(typed.getOrDefault("folder", ""));
    if (backups == null || folder.isPresent() && !backups.roots().allow(folder.get())) {
      faults.add(0, "root");
    } else if (folder.isPresent() && !usable(folder)) {
      faults.add("folder");
    }
    if (!faults.isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, typed, faults, "");
      return;
    }
    Map<String, String> changed = new LinkedHashMap<>();
    typed.forEach((name, value) -> changed.put("backup." + name, value));
    String version = String.valueOf(call.formParam("version"));
    int seen = version.matches("\\d{1,9}") ? Integer.parseInt(version) : -1;
    if (!settings.write(seen, changed)) {
      call.status(HttpStatus.CONFLICT);
      show(call, typed, List.of(), "setting.changed-elsewhere");
      return;
    }
    call.redirect("/backup", HttpStatus.SEE_OTHER);
  }

  private static List<String> faults(Map<String, String> typed) {
    List<String> faults = new java.util.ArrayList<>();
    String folder = typed.getOrDefault("folder", "");
    if (!folder.isEmpty() && BackupPlan.folder(folder).isEmpty()) {
      faults.add("folder");
    }
    if (BackupPlan.time(typed.getOrDefault("time", "")).isEmpty()) {
      faults.add("time");
    }
    if (!typed.getOrDefault("daily", "").matches("[1-9]\\d{0,2}")) {
      faults.add("daily");
    }
    if (!typed.getOrDefault("weekly", "").matches("\\d{1,3}")) {
      faults.add("weekly");
    }
    return faults;
  }

  /** A folder that is there or can be made, and written to. */
  private static boolean usable(Optional<Path> folder) {
    if (folder.isEmpty()) {
      return false;
    }
    try {
      Files.createDirectories(folder.get());
      return Files.isWritable(folder.get());
    } catch (IOException no) {
      return false;
    }
  }

  private void export(Context call) throws IOException {
    Path folder = Files.createTempDirectory("kerfwright-export");
    Path file = folder.resolve(BackupFile.name(java.time.LocalDateTime.now(clock)));
    Archive.write(database, file, clock.instant());
    call.header("Content-Disposition", "attachment; filename=\"" + file.getFileName() + "\"");
    call.contentType("application/zip").result(new SelfDeletingFile(file));
  }
}
