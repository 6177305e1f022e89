package kerfwright.app.drawer;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.stocklist.ListedRow;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.app.stocklist.RowProblem;
import kerfwright.app.storage.stock.Packages;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Outcome;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.ElementString;
import kerfwright.practice.label.MakersCode;
import kerfwright.practice.label.PackageMark;
import kerfwright.practice.label.Reading;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** One instrument: looked at, added, changed. */
public record ItemPages(DrawerService service, Packages packages, Templates templates, Clock clock)
    implements Feature {
  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/drawer/new", this::blank, Access.WORK);
    config.routes.post("/drawer/new", this::add, Access.WORK);
    config.routes.get("/drawer/item/{id}", this::item, Access.SEE);
    config.routes.post("/drawer/item/{id}", this::change, Access.WORK);
    config.routes.post("/drawer/item/{id}/split", this::split, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return Stream.concat(
            Stream.of("/drawer/new"),
            service.drawer().in(InstrumentState.CLEAN).stream()
                .limit(1)
                .map(one -> "/drawer/item/" + one.id()))
        .toList();
  }

  private void blank(Context call) {
    ItemForm form =
        DrawerPages.id(call.queryParam("like"))
            .flatMap(service.drawer()::find)
            .map(item -> ItemForm.like(item))
            .orElseGet(
                () -> ItemForm.of(name -> name.equals("pieces") ? "1" : call.queryParam(name)));
    form(call, form, scanned(call.queryParam("code")));
  }

  /** The maker's code an instrument is added with, null where there is none. */
  private @Nullable MakersCode scanned(@Nullable String code) {
    return code != null
            && ElementString.read(code, LocalDate.now(clock).getYear())
                instanceof Reading.Understood understood
        ? understood.code()
        : null;
  }

  private void form(Context call, ItemForm form, @Nullable MakersCode scanned) {
    Map<String, Object> values = new HashMap<>();
    values.put("form", form);
    values.put("scanned", scanned);
    values.put("today", LocalDate.now(clock));
    templates.html(call, "drawer/new.jte", values);
  }

  private void add(Context call) {
    ItemForm form = ItemForm.of(call::formParam);
    MakersCode scanned = scanned(call.formParam("code"));
    ListedRow row = meaning(Set.of()).read(1, form.values(), true);
    StockItem item = row.item();
    Outcome outcome = item == null ? null : service.add(List.of(item), DrawerPages.note(call));
    if (item != null && outcome != null && outcome.done()) {
      if (scanned != null) {
        packages.put(item.id(), 0, scanned);
      }
      call.redirect("/drawer/item/" + item.id() + "?did=" + outcome.batch(), HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    form(
        call,
        outcome == null
            ? form.with(row.problems())
            : form.with(
                outcome.obstacles().stream()
                    .map(one -> new RowProblem("id", Message.of("listed.label-taken", one.label())))
                    .toList()),
        scanned);
  }

  private RowMeaning meaning(Set<String> taken) {
    return new RowMeaning(InstrumentState.QUARANTINE, service::newId, taken);
  }

  private StockItem known(Context call) {
    return DrawerPages.id(call.pathParam("id"))
        .flatMap(service.drawer()::find)
        .orElseThrow(NotFoundResponse::new);
  }

  private void item(Context call) {
    StockItem item = known(call);
    MoveNotice notice =
        DrawerPages.id(call.queryParam("did"))
            .map(
                batch ->
                    MoveNotice.done(
                        templates.say(call),
                        service.drawer().batch(batch),
                        service.drawer().undone(batch)))
            .orElse(MoveNotice.NONE);
    show(call, item, ItemForm.of(item), notice, List.of());
  }

  private void show(
      Context call, StockItem item, ItemForm form, MoveNotice notice, List<String> meanwhile) {
    Map<String, Object> values = new HashMap<>();
    values.put("item", item);
    values.put("form", form);
    values.put("notice", notice);
    values.put("meanwhile", meanwhile);
    values.put("history", service.drawer().history(item.id()));
    values.put("pack", packages.of(item.id()).map(PackageMark::code).orElse(null));
    values.put("today", LocalDate.now(clock));
    templates.html(call, "drawer/item.jte", values);
  }

  private void change(Context call) {
    StockItem item = known(call);
    Say say = templates.say(call);
    ItemForm form = ItemForm.of(call::formParam);
    Pick seen =
        DrawerPages.pick(item.id() + ":" + call.formParam("version"))
            .orElse(new Pick(item.id(), 0));
    Map<String, String> cells = new LinkedHashMap<>(form.values());
    cells.put("state", item.state().id());
    cells.put("pieces", Integer.toString(item.pieces()));
    cells.put("uses", Integer.toString(item.uses()));
    ListedRow row = meaning(Set.of()).read(1, cells, true);
    StockItem typed = row.item();
    if (typed == null) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      List<String> why = row.problems().stream().map(one -> one.in(say)).toList();
      show(
          call,
          item,
          form.with(row.problems()),
          MoveNotice.refused(say, item.label(), why),
          List.of());
      return;
    }
    Outcome outcome =
        service.edit(
            seen,
            draft -> {
              draft.label = typed.label();
              draft.place = typed.place();
              draft.price = typed.price();
              draft.singleUse = typed.singleUse();
              draft.fields(typed.fields());
            },
            DrawerPages.note(call));
    UUID batch = outcome.batch();
    if (batch != null) {
      call.redirect("/drawer/item/" + item.id() + "?did=" + batch, HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    List<String> meanwhile =
        seen.version() == item.version()
            ? List.of()
            : service.drawer().history(item.id()).stream()
                .filter(entry -> entry.after().version() > seen.version())
                .map(
                    entry ->
                        say.at(
                            "listed.problem", say.moment(entry.at()), ItemWords.change(say, entry)))
                .toList();
    show(call, item, form, MoveNotice.refused(say, outcome.obstacles()), meanwhile);
  }

  private void split(Context call) {
    StockItem item = known(call);
    String label = String.valueOf(call.formParam("label")).strip();
    String pieces = String.valueOf(call.formParam("pieces")).strip();
    Pick seen =
        DrawerPages.pick(item.id() + ":" + call.formParam("version"))
            .orElse(new Pick(item.id(), 0));
    Say say = templates.say(call);
    if (!StockItem.labelIsSound(label)) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      String why = say.at("listed.label-unsound", label);
      show(call, item, ItemForm.of(item), MoveNotice.refused(say, "", List.of(why)), List.of());
      return;
    }
    Outcome outcome =
        service.split(seen, pieces.matches("\\d{1,6}") ? Integer.parseInt(pieces) : 0, label);
    UUID batch = outcome.batch();
    if (batch != null) {
      call.redirect("/drawer/item/" + item.id() + "?did=" + batch, HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    show(call, item, ItemForm.of(item), MoveNotice.refused(say, outcome.obstacles()), List.of());
  }
}
