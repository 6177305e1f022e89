package kerfwright.app.label;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.app.feature.Feature;
import kerfwright.app.print.PdfInk;
import kerfwright.app.print.SvgInk;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/** Labels on sheets: chosen, looked at, printed. */
public final class LabelPages implements Feature {
  static final int MOST_LABELS = 2000;

  private static final Map<String, OwnCode.Kind> NAMED =
      Map.of(
          "item", OwnCode.Kind.INSTRUMENT,
          "pouch", OwnCode.Kind.POUCH,
          "tray", OwnCode.Kind.TRAY,
          "load", OwnCode.Kind.LOAD);

  private final LabelSource source;
  private final Settings settings;
  private final Templates templates;

  public LabelPages(LabelSource source, Settings settings, Templates templates) {
    this.source = source;
    this.settings = settings;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/labels", this::show, Access.WORK);
    config.routes.post("/labels", this::show, Access.WORK);
    config.routes.post("/labels/sheet", this::keepSheet, Access.SET);
    config.routes.post("/labels.pdf", this::pdf, Access.WORK);
    config.routes.post("/labels.svg", this::svg, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/labels");
  }

  /** What was asked for: which labels, on which sheet, how often and from which place on. */
  private record Asked(
      List<String> picks, List<Label> labels, SheetForm form, int copies, int first) {
    List<Label> all() {
      List<Label> all = new ArrayList<>();
      for (Label label : labels) {
        for (int i = 0; i < copies && all.size() < MOST_LABELS; i++) {
          all.add(label);
        }
      }
      return all;
    }
  }

  private Asked asked(Context call) {
    Say say = templates.say(call);
    Set<String> picks = new LinkedHashSet<>();
    List<Label> labels = new ArrayList<>();
    NAMED.forEach(
        (name, kind) -> {
          List<UUID> ids = new ArrayList<>();
          for (String sent : sent(call, name, kind)) {
            id(sent).filter(id -> picks.add(name + "=" + id)).ifPresent(ids::add);
          }
          labels.addAll(source.labels(kind, ids, say));
        });
    SheetForm form = SheetForm.of(call::formParam, settings.read());
    int copies = whole(call.formParam("copies"), 1, 1, 50);
    int first = whole(call.formParam("first"), 1, 1, form.sheet().perSheet());
    return new Asked(List.copyOf(picks), labels, form, copies, first);
  }

  /** The list of the drawer sends what is ticked with its version. */
  private static List<String> sent(Context call, String name, OwnCode.Kind kind) {
    List<String> all = new ArrayList<>(call.queryParams(name));
    all.addAll(call.formParams(name));
    if (kind == OwnCode.Kind.INSTRUMENT) {
      call.formParams("pick").forEach(pick -> all.add(pick.replaceFirst(":\\d+$", "")));
    }
    return all;
  }

  private static Optional<UUID> id(String text) {
    return text.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")
        ? Optional.of(UUID.fromString(text))
        : Optional.empty();
  }

  private static int whole(
      @org.jspecify.annotations.Nullable String text, int otherwise, int least, int most) {
    return text == null || !text.strip().matches("\\d{1,4}")
        ? otherwise
        : Math.max(least, Math.min(most, Integer.parseInt(text.strip())));
  }

  private void show(Context call) {
    page(call, asked(call), "");
  }

  private void page(Context call, Asked asked, String said) {
    List<Label> all = asked.all();
    int room = asked.form().sheet().perSheet() - asked.first() + 1;
    List<String> preview = svg(asked, all.subList(0, Math.min(room, all.size())));
    templates.html(
        call,
        "label/labels.jte",
        Map.of(
            "picks", asked.picks(),
            "form", asked.form(),
            "copies", asked.copies(),
            "first", asked.first(),
            "count", all.size(),
            "preview", preview.isEmpty() ? "" : preview.get(0),
            "said", said));
  }

  private static List<String> svg(Asked asked, List<Label> labels) {
    try (PdfInk measure = new PdfInk()) {
      SvgInk ink = new SvgInk(measure);
      new LabelPainter(asked.form().sheet(), ink).paint(labels, asked.first() - 1);
      return ink.drawings();
    }
  }

  /** Keeps the sizes as the practice's usual sheet. */
  private void keepSheet(Context call) {
    Asked asked = asked(call);
    SettingValues set = settings.read();
    if (!asked.form().faults().isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      page(call, asked, "");
      return;
    }
    boolean kept = settings.write(set.version(), asked.form().settings());
    page(call, asked, kept ? "labels.sheet-kept" : "labels.sheet-not-kept");
  }

  private void pdf(Context call) {
    Asked asked = asked(call);
    if (!printable(call, asked)) {
      return;
    }
    try (PdfInk ink = new PdfInk()) {
      new LabelPainter(asked.form().sheet(), ink).paint(asked.all(), asked.first() - 1);
      call.header("Content-Disposition", "inline; filename=\"labels.pdf\"");
      call.contentType("application/pdf").result(ink.pdf());
    }
  }

  /** The sheets as one drawing, below each other. */
  private void svg(Context call) {
    Asked asked = asked(call);
    if (!printable(call, asked)) {
      return;
    }
    call.header("Content-Disposition", "attachment; filename=\"labels.svg\"");
    call.contentType("image/svg+xml").result(Stacked.of(svg(asked, asked.all()), asked.form()));
  }

  private boolean printable(Context call, Asked asked) {
    if (asked.form().faults().isEmpty() && !asked.labels().isEmpty()) {
      return true;
    }
    call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    page(call, asked, "");
    return false;
  }
}
