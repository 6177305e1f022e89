package kerfwright.app.drawer;

import io.javalin.config.JavalinConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.stocklist.ColumnMapping;
import kerfwright.app.stocklist.Drafts;
import kerfwright.app.stocklist.ListFile;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.stocklist.UnreadableList;
import kerfwright.app.template.Templates;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/** A list taken over: handed in, mapped, looked at, confirmed; nothing is written before. */
public final class ImportPages implements Feature {
  private static final long MULTIPART_OVERHEAD_BYTES = 64 * 1024;

  private final DrawerService service;
  private final Drafts drafts;
  private final Templates templates;
  private final Takeovers takeovers;

  public ImportPages(DrawerService service, Drafts drafts, Templates templates) {
    this.service = service;
    this.drafts = drafts;
    this.templates = templates;
    this.takeovers = new Takeovers(service, drafts);
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/drawer/import", call -> start(call, ""), Access.WORK);
    config.routes.post("/drawer/import", this::handIn, Access.WORK);
    config.routes.get("/drawer/import/{id}", this::preview, Access.WORK);
    config.routes.post("/drawer/import/{id}", this::confirm, Access.WORK);
    config.routes.get("/drawer/import/{id}/progress", this::progress, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/drawer/import");
  }

  private void start(Context call, String fault) {
    templates.html(call, "drawer/import.jte", Map.of("fault", fault));
  }

  private void handIn(Context call) throws IOException {
    try {
      // a length that is told is judged before anything is read; the server holds the rest to it
      if (call.req().getContentLengthLong() > ListFile.LIMIT_BYTES + MULTIPART_OVERHEAD_BYTES) {
        refuse(call, "drawer.file-too-large");
        return;
      }
      UploadedFile file = uploaded(call);
      if (file == null || file.size() == 0) {
        refuse(call, "drawer.file-missing");
        return;
      }
      String name = shown(file.filename());
      ListTable table;
      try (InputStream in = file.content()) {
        table = ListFile.read(name, in.readNBytes(ListFile.LIMIT_BYTES + 1));
      }
      UUID id = service.newId();
      drafts.keep(id, name, table);
      call.redirect("/drawer/import/" + id, HttpStatus.SEE_OTHER);
    } catch (BadRequestResponse tooMuch) {
      refuse(call, "drawer.file-broke-off");
    } catch (UnreadableList unreadable) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      start(call, unreadable.in(templates.say(call)));
    }
  }

  private void refuse(Context call, String key) {
    call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    start(call, templates.say(call).at(key));
  }

  private static @Nullable UploadedFile uploaded(Context call) {
    try {
      return call.uploadedFile("list");
    } catch (Exception tooMuch) {
      // the server stops reading at its limit, in words of its own
      throw new BadRequestResponse();
    }
  }

  private static String shown(String filename) {
    String name = filename.replaceAll(".*[/\\\\]", "").replaceAll("\\p{Cntrl}", "");
    return name.isBlank() ? "list" : name.substring(0, Math.min(80, name.length()));
  }

  private UUID id(Context call) {
    return DrawerPages.id(call.pathParam("id")).orElseThrow(NotFoundResponse::new);
  }

  private void preview(Context call) {
    UUID id = id(call);
    Drafts.Draft draft = drafts.find(id).orElseThrow(NotFoundResponse::new);
    if (draft.batch() != null) {
      call.redirect("/drawer?did=" + draft.batch());
      return;
    }
    List<String> chosen = call.queryParams("column");
    ColumnMapping mapping =
        chosen.isEmpty() ? ColumnMapping.guess(draft.table().header()) : ColumnMapping.of(chosen);
    InstrumentState otherwise = otherwise(call.queryParam("otherwise"));
    show(call, id, draft, mapping, otherwise, List.of());
  }

  private static InstrumentState otherwise(@Nullable String text) {
    return Identified.of(InstrumentState.class, String.valueOf(text))
        .orElse(InstrumentState.QUARANTINE);
  }

  private void show(
      Context call,
      UUID id,
      Drafts.Draft draft,
      ColumnMapping mapping,
      InstrumentState otherwise,
      List<String> problems) {
    ImportPreview preview = ImportPreview.of(service, draft.table(), mapping, otherwise);
    templates.html(
        call,
        "drawer/preview.jte",
        Map.of("id", id, "name", draft.name(), "preview", preview, "problems", problems));
  }

  private void confirm(Context call) {
    UUID id = id(call);
    Drafts.Draft draft = drafts.find(id).orElseThrow(NotFoundResponse::new);
    ColumnMapping mapping = ColumnMapping.of(call.formParams("column"));
    InstrumentState otherwise = otherwise(call.formParam("otherwise"));
    if (draft.batch() == null && !mapping.doubled().isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(
          call,
          id,
          draft,
          mapping,
          otherwise,
          List.of(templates.say(call).at("drawer.columns-doubled")));
      return;
    }
    takeovers.begin(id, draft, mapping, otherwise, templates.say(call));
    call.redirect("/drawer/import/" + id + "/progress", HttpStatus.SEE_OTHER);
  }

  private void progress(Context call) {
    UUID id = id(call);
    Drafts.Draft draft = drafts.find(id).orElseThrow(NotFoundResponse::new);
    if (draft.batch() != null) {
      call.redirect("/drawer?did=" + draft.batch());
      return;
    }
    Takeovers.Progress progress = takeovers.progress(id);
    if (progress.running()) {
      // works without script: the browser asks again
      call.header("Refresh", "1");
    }
    templates.html(
        call, "drawer/progress.jte", Map.of("id", id, "name", draft.name(), "progress", progress));
  }
}
