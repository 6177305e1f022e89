package kerfwright.app.reprocessing;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import kerfwright.app.reference.Written;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.reprocessing.ReprocessingFigure;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.reprocessing.Cycle;
import kerfwright.practice.reprocessing.Indicator;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadEvent;
import kerfwright.practice.reprocessing.LoadRefusal;
import kerfwright.practice.reprocessing.ProcessingStep;
import kerfwright.practice.reprocessing.ReprocessingSetting;
import kerfwright.practice.setting.StaffRole;
import kerfwright.quantity.Identified;

/** What reprocessing is called, in the language of the page. */
public final class ReprocessingWords {
  private ReprocessingWords() {}

  public static String step(Say say, ProcessingStep step) {
    return say.at("reprocessing.step-" + step.id());
  }

  public static String cycle(Say say, Cycle cycle) {
    return say.at("reprocessing.cycle", cycle.type().name(), cycle.celsius());
  }

  /** A cycle with its own minutes. */
  public static String cycle(Say say, Cycle cycle, ReprocessingSetting own) {
    return say.at("reprocessing.cycle-takes", cycle(say, cycle), own.minutesOf(cycle));
  }

  /** By what a scanner finds an instrument in a list. */
  public static String codes(StockItem item) {
    return item.label() + " " + new OwnCode(OwnCode.Kind.INSTRUMENT, item.id()).text();
  }

  /** What a piece that is no rotary instrument is, and that it is oiled; else empty. */
  public static String care(Say say, StockItem item) {
    return item.pieceKind()
        .map(
            kind ->
                kind.oiled()
                    ? say.at("reprocessing.and-oil", Labels.piece(say, kind))
                    : Labels.piece(say, kind))
        .orElse("");
  }

  public static String indicator(Say say, Indicator indicator) {
    return say.at("reprocessing.indicator-" + indicator.id());
  }

  public static String result(Say say, Indicator.Result result) {
    return say.at("reprocessing.result-" + result.id());
  }

  public static String state(Say say, Load.State state) {
    return say.at("reprocessing.state-" + state.id());
  }

  public static String role(Say say, StaffRole role) {
    return say.at("setting.role-" + role.id());
  }

  /** Where a running load stands in its time. */
  public static String time(Say say, Load load, Instant now) {
    long left = Duration.between(now, load.over()).toMinutes() + 1;
    return load.over().isAfter(now)
        ? say.at("reprocessing.time-left", left)
        : say.at("reprocessing.time-over", say.moment(load.over()));
  }

  public static String event(Say say, LoadEvent event) {
    Indicator indicator = event.indicator();
    Indicator.Result result = event.result();
    return indicator == null || result == null
        ? say.at("reprocessing.event-" + event.what().id())
        : indicator(say, indicator) + ": " + result(say, result);
  }

  public static String refusal(Say say, LoadRefusal refusal) {
    String kind = refusal.kind().id();
    List<String> told = refusal.arguments();
    Object[] words =
        switch (refusal.kind()) {
          case NOT_READ, INDICATOR_FAILED ->
              new Object[] {
                indicator(say, Identified.of(Indicator.class, told.get(0)).orElseThrow())
              };
          case DECIDED -> new Object[] {say.at("reprocessing.state-" + told.get(0))};
          case NOT_CLEANED ->
              new Object[] {
                told.get(0),
                Labels.state(say, Identified.of(InstrumentState.class, told.get(1)).orElseThrow())
              };
          default -> told.toArray();
        };
    return say.at("reprocessing.refusal-" + kind, words);
  }

  /** Low and high end of a figure, as far as told. */
  public static String range(Say say, ReprocessingFigure figure) {
    Double low = figure.numbers().low();
    Double high = figure.numbers().high();
    if (low == null || high == null) {
      throw new IllegalStateException(figure.id() + " has no range");
    }
    return say.whole(Math.round(low)) + "\u2013" + say.whole(Math.round(high));
  }

  public static String mark(ReprocessingFigure figure) {
    return Written.mark(figure.basis());
  }
}
