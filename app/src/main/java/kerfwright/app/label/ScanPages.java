package kerfwright.app.label;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.ElementString;
import kerfwright.practice.label.MakersCode;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.label.PackageMark;
import kerfwright.practice.label.PackageMatch;
import kerfwright.practice.label.Packages;
import kerfwright.practice.label.Reading;

/** What was scanned or typed leads to its page, or is explained. */
public record ScanPages(
    Drawer drawer,
    Packages packages,
    Map<OwnCode.Kind, Coded> coded,
    WordSearch words,
    Templates templates,
    Clock clock)
    implements Feature {
  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/scan", this::scan, Access.CASES);
    config.routes.post("/scan/belongs", this::belongs, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/scan");
  }

  private void scan(Context call) {
    String code = Optional.ofNullable(call.queryParam("code")).orElse("").strip();
    Optional<OwnCode> own = OwnCode.read(code);
    Optional<String> page =
        own.isPresent()
            ? Optional.ofNullable(coded.get(own.get().kind()))
                .flatMap(things -> things.page().apply(own.get().id()))
            : labelled(code).map(ItemLabels::page);
    if (page.isPresent()) {
      call.redirect(page.get(), HttpStatus.SEE_OTHER);
      return;
    }
    if (code.isEmpty()) {
      show(call, Map.of("code", ""));
    } else if (own.isPresent()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, Map.of("code", code, "gone", own.get().kind()));
    } else {
      makers(call, code);
    }
  }

  private Optional<StockItem> labelled(String code) {
    return drawer.labelled(code).or(() -> drawer.labelled(code.toUpperCase(Locale.ROOT)));
  }

  private void makers(Context call, String code) {
    Reading reading = ElementString.read(code, LocalDate.now(clock).getYear());
    if (reading instanceof Reading.Understood understood) {
      MakersCode read = understood.code();
      String gtin = read.gtin();
      List<PackageMark> kept = gtin == null ? List.of() : packages.withGtin(gtin);
      PackageMatch match = PackageMatch.of(read, kept);
      if (match.same().size() == 1) {
        call.redirect("/drawer/item/" + match.same().get(0) + "?scanned=1", HttpStatus.SEE_OTHER);
        return;
      }
      show(
          call,
          Map.of(
              "code", code,
              "ways", List.of(read),
              "same", items(match.same()),
              "article", items(match.article())));
    } else if (reading instanceof Reading.Several several) {
      show(call, Map.of("code", code, "ways", several.codes()));
    } else {
      boolean ofMaker = ElementString.looksLikeOne(code);
      if (reading instanceof Reading.Refused refused && ofMaker) {
        call.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(call, Map.of("code", code, "fault", refused.fault()));
      } else {
        words(call, code);
      }
    }
  }

  /** Words: the one thing they name, or everything that fits, or what comes nearest. */
  private void words(Context call, String typed) {
    WordSearch.Hits found = words.find(templates.say(call), typed);
    boolean nearest = !found.words().equals(typed);
    if (found.hits().size() == 1 && !nearest) {
      call.redirect(found.hits().get(0).link(), HttpStatus.SEE_OTHER);
      return;
    }
    if (found.hits().isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    }
    templates.html(call, "label/found.jte", Map.of("typed", typed, "found", found));
  }

  private List<StockItem> items(List<UUID> ids) {
    return ids.stream().map(drawer::find).flatMap(Optional::stream).toList();
  }

  /** The scanned package is the one of an instrument that is in the drawer already. */
  private void belongs(Context call) {
    String code = Optional.ofNullable(call.formParam("code")).orElse("");
    String label = Optional.ofNullable(call.formParam("label")).orElse("").strip();
    Reading reading = ElementString.read(code, LocalDate.now(clock).getYear());
    if (!(reading instanceof Reading.Understood understood)) {
      call.redirect("/scan", HttpStatus.SEE_OTHER);
      return;
    }
    Optional<StockItem> item = labelled(label);
    int version = item.flatMap(one -> packages.of(one.id())).map(PackageMark::version).orElse(0);
    boolean other = version > 0 && call.formParam("replace") == null;
    boolean done =
        item.isPresent() && !other && packages.put(item.get().id(), version, understood.code());
    if (done) {
      call.redirect("/drawer/item/" + item.get().id() + "?scanned=1", HttpStatus.SEE_OTHER);
      return;
    }
    call.status(item.isPresent() ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
    String fault = item.isPresent() ? "scan.has-another" : "scan.no-such-label";
    show(
        call,
        Map.of("code", code, "ways", List.of(understood.code()), "refusal", fault, "label", label));
  }

  private void show(Context call, Map<String, Object> answer) {
    Map<String, Object> values = new HashMap<>(answer);
    values.put("today", LocalDate.now(clock));
    templates.html(call, "label/scan.jte", values);
  }
}
