package kerfwright.app.daypage;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.practice.daylist.BookingFault;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;
import org.jspecify.annotations.Nullable;

/** Opening hours, chairs, sterilisers, and after how many uses an instrument is withdrawn. */
record DaySettingPages(Settings settings, DayService service, Templates templates)
    implements Feature {
  private static final int DAYS_AHEAD = 60;

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get(
        "/day/settings", call -> show(call, DaySettingForm.of(settings.read()), null), Access.SET);
    config.routes.post("/day/settings", this::write, Access.SET);
  }

  @Override
  public List<String> pages() {
    return List.of("/day/settings");
  }

  /** Days from today on with appointments that do not fit what is set. */
  private List<LocalDate> misfits() {
    DaySetting setting = service.setting();
    LocalDate today = service.today();
    return Stream.iterate(today, day -> day.plusDays(1))
        .limit(DAYS_AHEAD)
        .filter(day -> !BookingFault.of(service.books().read(day).bookings(), setting).isEmpty())
        .toList();
  }

  /**
   * @param told key of what is told above, or null
   */
  private void show(Context call, DaySettingForm form, @Nullable String told) {
    templates.html(
        call,
        "day/settings.jte",
        Map.of(
            "form",
            form,
            "own",
            DaySetting.of(form.set()),
            "told",
            told == null ? "" : told,
            "misfits",
            misfits(),
            "done",
            told == null && call.queryParam("done") != null));
  }

  private void write(Context call) {
    SettingValues set = settings.read();
    DaySettingForm form = DaySettingForm.of(set, name -> Sent.text(call, name));
    String emptied = Sent.text(call, "reset");
    if (!emptied.isEmpty()) {
      show(call, form.emptied(emptied), "day.set-emptied");
      return;
    }
    if (!form.slips().isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, form, "day.set-slips");
    } else if (settings.write(Sent.version(call), form.typed())) {
      call.redirect("/day/settings?done=1", HttpStatus.SEE_OTHER);
    } else {
      call.status(HttpStatus.CONFLICT);
      show(call, DaySettingForm.of(settings.read(), form::at), "day.set-meanwhile");
    }
  }
}
