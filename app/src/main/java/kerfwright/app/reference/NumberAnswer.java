package kerfwright.app.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.app.drawing.instrument.AbrasiveSurface;
import kerfwright.app.drawing.instrument.BladeSection;
import kerfwright.app.drawing.instrument.InstrumentDrawing;
import kerfwright.app.stocklist.RowProblem;
import kerfwright.app.words.Remarks;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.number.IsoCandidate;
import kerfwright.catalogue.number.IsoNumber;
import kerfwright.catalogue.number.MalformedNumberException;
import kerfwright.catalogue.number.NumberExplanation;
import kerfwright.catalogue.number.UsMatch;
import kerfwright.catalogue.number.UsSize;
import kerfwright.catalogue.number.UsSizes;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * What a typed ISO number or US size means, with its drawings.
 *
 * @param iso the number as typed
 * @param us the size as typed
 * @param explained the number, group by group, or null
 * @param size the US size, or null
 * @param candidates ISO numbers the US size may stand for
 * @param matches US sizes the number may stand for
 * @param instrument the instrument as drawn, or null
 * @param drawings silhouette and head, as SVG text
 * @param notDrawn why there is no drawing, or empty
 * @param faults what is wrong, by field
 */
public record NumberAnswer(
    String iso,
    String us,
    @Nullable NumberExplanation explained,
    @Nullable UsSize size,
    List<IsoCandidate> candidates,
    List<UsMatch> matches,
    @Nullable TypedInstrument instrument,
    List<String> drawings,
    String notDrawn,
    Map<String, Message> faults) {
  private static final int LONGEST = 60;

  public NumberAnswer {
    candidates = List.copyOf(candidates);
    matches = List.copyOf(matches);
    drawings = List.copyOf(drawings);
    faults = Map.copyOf(faults);
  }

  public static NumberAnswer of(Say say, String typedIso, String typedUs) {
    String iso = shortened(typedIso);
    String us = shortened(typedUs);
    Map<String, Message> faults = new LinkedHashMap<>();
    NumberExplanation explained = null;
    if (!iso.isEmpty()) {
      try {
        explained = IsoNumber.parse(iso).explain();
      } catch (MalformedNumberException malformed) {
        faults.put("iso", Message.of("listed.found", iso, malformed.remark().message()));
      }
    }
    UsSize size = us.isEmpty() ? null : UsSizes.find(us).orElse(null);
    if (!us.isEmpty() && size == null) {
      List<String> near = UsSizes.suggestions(us);
      Message unknown = Message.of("reference.us-unknown", us);
      faults.put("us", Remarks.nearest(unknown, near));
    }
    List<IsoCandidate> candidates =
        size == null
            ? List.of()
            : UsSizes.isoCandidates(size, InstrumentKind.CARBIDE, ShankType.FG);
    TypedInstrument instrument = instrument(explained, size);
    InstrumentProperties properties = instrument == null ? null : instrument.properties();
    String notDrawn = instrument == null || properties != null ? "" : words(say, instrument);
    return new NumberAnswer(
        iso,
        us,
        explained,
        size,
        candidates,
        properties == null || explained == null ? List.of() : UsSizes.matching(properties),
        instrument,
        properties == null ? List.of() : drawn(say, properties),
        notDrawn,
        faults);
  }

  private static @Nullable TypedInstrument instrument(
      @Nullable NumberExplanation explained, @Nullable UsSize size) {
    if (explained != null && !explained.rootCanal()) {
      return TypedInstrument.of(Map.of("iso", explained.number().encode()));
    }
    return size == null ? null : TypedInstrument.of(Map.of("us", size.number()));
  }

  private static String words(Say say, TypedInstrument instrument) {
    return instrument.faults().entrySet().stream()
        .map(each -> new RowProblem(each.getKey(), each.getValue()).in(say))
        .collect(Collectors.joining("; "));
  }

  private static List<String> drawn(Say say, InstrumentProperties properties) {
    String whole;
    try {
      whole = InstrumentDrawing.full(say, "silhouette", properties);
    } catch (IllegalArgumentException impossible) {
      return List.of();
    }
    Integer blades = properties.blades();
    GritClass grit = properties.grit();
    if (properties.kind().bladed() && blades != null && blades >= 2) {
      double diameter = properties.headDiameter().millimetres();
      return List.of(whole, BladeSection.draw(say, "blades", blades, diameter));
    }
    return grit == null || !properties.kind().isDiamond()
        ? List.of(whole)
        : List.of(whole, AbrasiveSurface.draw(say, "grains", grit, 1));
  }

  private static String shortened(String typed) {
    String text = typed.strip();
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST);
  }

  public String fault(Say say, String field) {
    Message fault = faults.get(field);
    return fault == null ? "" : say.of(fault);
  }
}
