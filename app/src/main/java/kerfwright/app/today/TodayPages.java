package kerfwright.app.today;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import kerfwright.app.feature.Feature;
import kerfwright.app.feature.Notice;
import kerfwright.app.security.Access;
import kerfwright.app.security.Signed;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.record.Chain;
import kerfwright.practice.setting.CaseSetting;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;
import kerfwright.practice.setting.StaffRole;
import kerfwright.practice.setting.SteriliserSetting;
import kerfwright.practice.setting.WholeSetting;
import kerfwright.quantity.Identified;

/** What is next, what is missing, what needs attention. */
public final class TodayPages implements Feature {
  private static final int LEAST_RPM = 5_000;
  private static final int MOST_RPM = 500_000;

  private final Parts parts;
  private final Templates templates;
  private final Clock clock;

  /**
   * What the page shows besides itself.
   *
   * @param stock the stock
   * @param settings what is set, for the first start
   * @param handpieces those that can be chosen
   * @param examples cases of the demo practice
   * @param demo true for the demo practice, which is asked nothing
   * @param visits the next appointments
   * @param notices what the features have to say
   * @param record where the record ends
   * @param clock says when this machine's clock is behind what is written
   */
  public record Parts(
      DrawerService stock,
      Settings settings,
      List<Handpiece> handpieces,
      List<CaseLink> examples,
      boolean demo,
      NextVisits visits,
      Function<Say, List<Notice>> notices,
      Supplier<Chain> record,
      ClockNotices clock) {}

  public TodayPages(Parts parts, Templates templates, Clock clock) {
    this.parts = parts;
    this.templates = templates;
    this.clock = clock;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/", call -> show(call, ""), Access.SEE);
    config.routes.post("/start/language", this::language, Access.SET);
    config.routes.post("/start/handpieces", this::handpieces, Access.SET);
    config.routes.post("/start/usual-set", this::usualSet, Access.SET);
    config.routes.post("/start/people", this::people, Access.SET);
    config.routes.post("/start/sterilisers", this::sterilisers, Access.SET);
    config.routes.post("/start/put-aside", this::putAside, Access.SET);
  }

  @Override
  public List<String> pages() {
    return List.of("/");
  }

  @Override
  public List<Notice> notices(Say say) {
    return parts.clock().of(say);
  }

  private void show(Context call, String fault) {
    Say say = templates.say(call);
    SettingValues set = parts.settings().read();
    Optional<FirstStart.Question> question =
        parts.demo() || !Signed.may(call, Access.SET)
            ? Optional.empty()
            : FirstStart.next(set, parts.stock().drawer());
    List<Notice> notices = new ArrayList<>(parts.notices().apply(say));
    notices.sort(Comparator.comparing(Notice::urgent).reversed());
    Map<InstrumentState, Integer> pieces = parts.stock().drawer().pieces();
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("day", LocalDate.now(clock));
    values.put("visits", Signed.may(call, Access.CASES) ? parts.visits().next(say) : List.of());
    values.put("matters", notices);
    values.put("record", parts.record().get());
    values.put("examples", parts.examples());
    values.put("demo", parts.demo());
    values.put("instruments", pieces.values().stream().mapToInt(Integer::intValue).sum());
    values.put("clean", pieces.getOrDefault(InstrumentState.CLEAN, 0));
    values.put("question", question.map(FirstStart.Question::id).orElse(""));
    values.put("number", question.map(FirstStart.Question::number).orElse(0));
    values.put("set", set);
    values.put("handpieces", parts.handpieces());
    values.put("fault", fault);
    templates.html(call, "today/today.jte", values);
  }

  private void language(Context call) {
    String language = sent(call, "language");
    String teeth = sent(call, "teeth");
    if (Language.byId(language).isEmpty()) {
      refuse(call, "today.choose-language");
      return;
    }
    Map<String, String> changed = new LinkedHashMap<>();
    changed.put("language", language);
    if (List.of("fdi", "universal", "palmer").contains(teeth)) {
      changed.put("teeth", teeth);
    }
    written(call, changed);
  }

  private void handpieces(Context call) {
    List<String> known = parts.handpieces().stream().map(Handpiece::id).toList();
    List<String> chosen = call.formParams("handpieces").stream().filter(known::contains).toList();
    String water = sent(call, "water").replace(',', '.');
    if (chosen.isEmpty()) {
      refuse(call, "today.choose-handpiece");
      return;
    }
    if (!water.isEmpty() && !water.matches("\\d{1,3}(\\.\\d{1,2})?")) {
      refuse(call, "today.water-needed");
      return;
    }
    Map<String, String> changed = new LinkedHashMap<>();
    changed.put(CaseSetting.HANDPIECES, String.join(" ", chosen));
    changed.put(CaseSetting.COOLANT, water);
    written(call, changed);
  }

  /** Fills an empty drawer with a usual set. */
  private void usualSet(Context call) {
    OptionalInt frictionGrip = speed(call, "friction_grip_rpm");
    OptionalInt latch = speed(call, "latch_rpm");
    if (frictionGrip.isEmpty() || latch.isEmpty()) {
      refuse(call, "today.speeds-needed");
      return;
    }
    String place = templates.say(call).at("today.usual-set-place");
    List<StockItem> pieces =
        UsualSet.pieces(
            frictionGrip.getAsInt(), latch.getAsInt(), place, Set.of(), parts.stock()::newId);
    if (!parts.stock().drawer().pieces().isEmpty() || !parts.stock().add(pieces, place).done()) {
      refuse(call, "today.drawer-not-empty");
      return;
    }
    call.redirect("/", HttpStatus.SEE_OTHER);
  }

  private static OptionalInt speed(Context call, String name) {
    String digits = sent(call, name).replaceAll("[ .,\\u00a0\\u202f]", "");
    int rpm = digits.matches("\\d{4,6}") ? Integer.parseInt(digits) : 0;
    return rpm >= LEAST_RPM && rpm <= MOST_RPM ? OptionalInt.of(rpm) : OptionalInt.empty();
  }

  private void people(Context call) {
    String initials = sent(call, "initials").toUpperCase(java.util.Locale.ROOT);
    Optional<StaffRole> role = Identified.of(StaffRole.class, sent(call, "role"));
    if (!Person.initialsAreSound(initials) || role.isEmpty()) {
      refuse(call, "setting.initials-needed");
      return;
    }
    written(call, Map.of(Person.PREFIX + initials, role.get().id()));
  }

  private void sterilisers(Context call) {
    Map<String, String> changed = new LinkedHashMap<>();
    for (WholeSetting one : List.of(SteriliserSetting.COUNT, SteriliserSetting.POUCHES)) {
      String value = sent(call, one.name());
      if (value.isEmpty() || !one.allows(value)) {
        refuse(call, "today.whole-number-needed");
        return;
      }
      changed.put(one.name(), value);
    }
    written(call, changed);
  }

  private void putAside(Context call) {
    SettingValues set = parts.settings().read();
    String question = sent(call, "question");
    if (java.util.Arrays.stream(FirstStart.Question.values())
        .noneMatch(one -> one.id().equals(question))) {
      call.redirect("/", HttpStatus.SEE_OTHER);
      return;
    }
    String aside = (set.text(FirstStart.PUT_ASIDE, "") + " " + question).strip();
    written(call, Map.of(FirstStart.PUT_ASIDE, aside));
  }

  /** An answer adds to what is set; that somebody else answered first does no harm. */
  private void written(Context call, Map<String, String> changed) {
    for (int attempt = 0; attempt < 3; attempt++) {
      if (parts.settings().write(parts.settings().read().version(), changed)) {
        call.redirect("/", HttpStatus.SEE_OTHER);
        return;
      }
    }
    call.status(HttpStatus.CONFLICT);
    show(call, "setting.changed-elsewhere");
  }

  private void refuse(Context call, String fault) {
    call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    show(call, fault);
  }

  private static String sent(Context call, String name) {
    String value = call.formParam(name);
    return value == null ? "" : value.strip();
  }
}
