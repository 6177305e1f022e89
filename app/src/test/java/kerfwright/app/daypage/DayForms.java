package kerfwright.app.daypage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.daylist.TrayTemplate;
import kerfwright.practice.setting.SettingValues;
import kerfwright.schedule.Need;

/** The forms of the day's pages, for the fuzzer. */
public final class DayForms {
  private static final Say SAY = Say.in(Language.ENGLISH);
  private static final List<TrayTemplate> TRAYS =
      List.of(new TrayTemplate("Recall", 30, List.of(Need.of("round-diamond-medium"))));

  private DayForms() {}

  public static void booking(UnaryOperator<String> sent) {
    Map<String, String> faults = new HashMap<>();
    CaseNeeds needs = text -> new CaseNeeds.Asked(List.of(), List.of());
    BookingForm form = BookingForm.of(sent::apply);
    form.read(SAY, "A1", null, TRAYS, needs, faults).ifPresent(read -> BookingForm.of(read, TRAYS));
  }

  public static void settings(UnaryOperator<String> sent) {
    DaySettingForm form = DaySettingForm.of(SettingValues.none(), sent);
    if (form.slips().isEmpty()) {
      DaySetting.of(new SettingValues(1, form.typed()));
    }
  }
}
