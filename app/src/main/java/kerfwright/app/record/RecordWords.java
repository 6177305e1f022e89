package kerfwright.app.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.record.ChainCheck;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.Logged;
import kerfwright.practice.record.Remark;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/** What the record says, in the language of the page. */
public final class RecordWords {
  private RecordWords() {}

  public static String remark(Say say, Remark remark) {
    if (remark.kind() == Remark.Kind.HANDPIECE) {
      return say.at("record.remark-handpiece", remark(say, remark.plain()));
    }
    Object[] told = remark.arguments().toArray();
    if (remark.kind() == Remark.Kind.NOT_READY) {
      told =
          Identified.of(InstrumentState.class, remark.arguments().get(0))
              .map(state -> new Object[] {Labels.state(say, state)})
              .orElse(told);
    }
    return say.at("record.remark-" + remark.kind().id(), told);
  }

  public static String refusal(Say say, Logged.Refusal refusal) {
    return say.at("record.refusal-" + refusal.id());
  }

  public static String broken(Say say, ChainCheck.Break broken) {
    return say.at("record.broken-" + broken.kind().id(), broken.number());
  }

  /** A figure as it was entered, at most six digits, in the practice's own way. */
  public static String figure(Say say, double value) {
    String plain =
        new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros().toPlainString();
    return say.figures(plain);
  }

  private static void told(List<String> all, Say say, String key, @Nullable Double value) {
    if (value != null) {
      all.add(say.at(key, figure(say, value)));
    }
  }

  /** What is known of the cut, each with its unit. */
  public static List<String> cut(Say say, Cut cut) {
    List<String> all = new ArrayList<>();
    Double set = cut.setSpeedRpm();
    if (set != null) {
      all.add(say.at("record.set-rpm", say.whole(Math.round(set))));
    }
    told(all, say, "record.cut-s", cut.cutSeconds());
    told(all, say, "record.total-s", cut.totalSeconds());
    told(all, say, "record.load-n", cut.loadN());
    told(all, say, "record.coolant", cut.coolantMlPerMin());
    for (Map.Entry<String, Double> one : cut.mm3ByMaterial().entrySet()) {
      String material =
          say.has("label.material-" + one.getKey())
              ? Labels.materialWithin(say, one.getKey())
              : one.getKey();
      all.add(say.at("record.mm3", figure(say, one.getValue()), material));
    }
    return all;
  }
}
