package kerfwright.app.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kerfwright.app.drawing.ArchPicker;
import kerfwright.app.drawing.chart.MaterialPlot;
import kerfwright.app.feature.Feature;
import kerfwright.app.reference.AlikeAnswer;
import kerfwright.app.reference.LayersAnswer;
import kerfwright.app.reference.NumberAnswer;
import kerfwright.app.reference.Place;
import kerfwright.app.reference.ToothFaults;
import kerfwright.app.reference.TypedInstrument;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.MaterialReport;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.ToolMaterial;
import kerfwright.catalogue.material.ToolMaterials;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.catalogue.tooth.ToothReading;
import kerfwright.quantity.SourceKey;

/** The reference pages: everything the catalogue knows, and where it comes from. */
final class ReferencePages implements Feature {
  private static final int LONGEST = 60;

  private final PlanService service;
  private final Templates templates;

  ReferencePages(PlanService service, Templates templates) {
    this.service = service;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/reference", call -> show(call, "start", Map.of()), Access.SEE);
    config.routes.get(Place.NUMBERS.path(), this::numbers, Access.SEE);
    config.routes.get(Place.ALIKE.path(), this::alike, Access.SEE);
    config.routes.get(Place.TEETH.path(), this::teeth, Access.SEE);
    config.routes.get(Place.LAYERS.path(), this::layers, Access.SEE);
    config.routes.get("/reference/material", this::material, Access.SEE);
    config.routes.get(Place.PLOT.path(), this::plot, Access.SEE);
    config.routes.get("/reference/source", this::source, Access.SEE);
    for (Place place :
        List.of(
            Place.GRIT,
            Place.HANDPIECES,
            Place.MATERIALS,
            Place.EVIDENCE,
            Place.LIMITS,
            Place.SOURCES)) {
      String template = place.path().substring("/reference/".length());
      config.routes.get(place.path(), call -> show(call, template, Map.of()), Access.SEE);
    }
  }

  @Override
  public List<String> pages() {
    return Stream.concat(
            Stream.of(
                "/reference",
                Place.LAYERS.path() + "?tooth=16",
                "/reference/material?id=enamel",
                "/reference/source?key=park-2008"),
            Arrays.stream(Place.values()).map(Place::path))
        .toList();
  }

  private void show(Context call, String template, Map<String, Object> values) {
    templates.html(call, "reference/" + template + ".jte", values);
  }

  private static String typed(Context call, String name) {
    String text = call.queryParam(name);
    String plain = text == null ? "" : text.strip();
    return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST);
  }

  private static Map<String, String> typed(Context call, List<String> names) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (String name : names) {
      String text = typed(call, name);
      if (!text.isEmpty()) {
        fields.put(name, text);
      }
    }
    return fields;
  }

  private void numbers(Context call) {
    NumberAnswer answer =
        NumberAnswer.of(templates.say(call), typed(call, "iso"), typed(call, "us"));
    call.status(answer.faults().isEmpty() ? 200 : 422);
    show(call, "numbers", Map.of("answer", answer));
  }

  private void alike(Context call) {
    Map<String, String> fields = typed(call, DrawerFields.COLUMNS);
    TypedInstrument typed = TypedInstrument.of(fields);
    Map<String, Object> values = new HashMap<>();
    values.put("typed", typed);
    InstrumentProperties wanted = typed.asked() ? typed.properties() : null;
    AlikeAnswer answer = wanted == null ? null : AlikeAnswer.of(wanted, service.clean());
    values.put("answer", answer);
    values.put(
        "unknown",
        wanted != null && answer == null
            ? templates.say(call).of(AlikeAnswer.unknown(wanted))
            : "");
    call.status(typed.asked() && answer == null ? 422 : 200);
    show(call, "alike", values);
  }

  private void teeth(Context call) {
    String text = typed(call, "tooth");
    Map<String, Object> values = new HashMap<>();
    values.put("typed", text);
    values.put("reading", null);
    values.put("fault", "");
    Tooth chosen = null;
    if (!text.isEmpty()) {
      try {
        ToothReading reading = ToothNotation.parse(text);
        values.put("reading", reading);
        chosen = reading.ambiguous() ? null : reading.only();
      } catch (IllegalArgumentException none) {
        values.put("fault", templates.say(call).of(ToothFaults.unknown(text)));
        call.status(422);
      }
    }
    for (ArchPicker.Dentition each : ArchPicker.Dentition.values()) {
      boolean primary = each == ArchPicker.Dentition.PRIMARY;
      Tooth here = chosen != null && chosen.primary() == primary ? chosen : null;
      String svg =
          ArchPicker.draw(
              templates.say(call),
              primary ? "primary" : "permanent",
              each,
              fdi -> {
                // Palmer is never ambiguous, so a picked tooth is the one meant
                String name =
                    ToothNotation.write(
                        new Tooth(fdi), kerfwright.catalogue.tooth.ToothSystem.PALMER);
                return Place.TEETH.path() + "?tooth=" + name + "#answer";
              },
              here);
      values.put(primary ? "primary" : "permanent", svg);
    }
    show(call, "teeth", values);
  }

  private void layers(Context call) {
    LayersAnswer answer =
        LayersAnswer.of(typed(call, List.of("tooth", "restoration", "procedure", "age")));
    call.status(answer.faults().isEmpty() ? 200 : 422);
    show(call, "layers", Map.of("answer", answer));
  }

  private void material(Context call) {
    MaterialReport report =
        Materials.packaged().report(typed(call, "id")).orElseThrow(NotFoundResponse::new);
    show(call, "material", Map.of("report", report));
  }

  private void plot(Context call) {
    List<Material> materials = new ArrayList<>();
    Materials.packaged().ids().forEach(id -> materials.add(Materials.packaged().get(id)));
    ToolMaterials known = ToolMaterials.packaged();
    List<ToolMaterial> tools =
        List.of(
            known.diamond(),
            known.get("alumina"),
            known.cementedCarbide(),
            known.ceramic(),
            known.toolSteel(),
            known.polymer());
    String svg = MaterialPlot.draw(templates.say(call), "hard-or-tough", materials, tools);
    show(call, "plot", Map.of("svg", svg, "materials", materials, "tools", tools));
  }

  private void source(Context call) {
    String key = typed(call, "key");
    boolean plain = key.matches("[a-z0-9][a-z0-9.-]*");
    if (!plain) {
      throw new NotFoundResponse();
    }
    show(call, "source", Map.of("key", new SourceKey(key)));
  }
}
