package kerfwright.app.label;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.print.PdfInk;
import kerfwright.app.print.SvgInk;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;

/** Labels on sheets: chosen, looked at, printed. */
public record LabelPages(Map<OwnCode.Kind, Coded> coded, Settings settings, Templates templates)
    implements Feature {
  static final int MOST_LABELS = 2000;

  private static final Map<String, OwnCode.Kind> NAMED =
      Map.of(
          "item", OwnCode.Kind.INSTRUMENT,
          "pouch", OwnCode.Kind.POUCH,
          "tray", OwnCode.Kind.TRAY,
          "load", OwnCode.Kind.LOAD);

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
          Coded things = Objects.requireNonNull(coded.get(kind));
          for (String sent : sent(call, name, kind)) {
            Sent.id(sent)
                .filter(id -> picks.add(name + "=" + id))
                .flatMap(id -> things.label().apply(id, say))
                .ifPresent(labels::add);
          }
        });
    SheetForm form = SheetForm.of(call::formParam, settings.read());
    int copies = count(call, "copies", 50);
    int first = count(call, "first", form.sheet().perSheet());
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

  private static int count(Context call, String name, int most) {
    return Math.max(1, Math.min(most, Sent.whole(call.formParam(name)).orElse(1)));
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
    call.contentType("image/svg+xml")
        .result(stacked(svg(asked, asked.all()), asked.form().sheet()));
  }

  private static String stacked(List<String> sheets, LabelSheet size) {
    if (sheets.size() == 1) {
      return sheets.get(0);
    }
    StringBuilder all = new StringBuilder();
    all.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.2fmm\" height=\"%2$.2fmm\""
                + " viewBox=\"0 0 %1$.2f %2$.2f\">\n",
            size.widthMm(),
            size.heightMm() * sheets.size()));
    for (int i = 0; i < sheets.size(); i++) {
      double top = i * size.heightMm();
      all.append(String.format(Locale.ROOT, "<g transform=\"translate(0 %.2f)\">", top));
      all.append(sheets.get(i).replaceFirst("width=\"[0-9.]+mm\" height=\"[0-9.]+mm\" ", ""));
      all.append("</g>\n");
    }
    return all + "</svg>\n";
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
