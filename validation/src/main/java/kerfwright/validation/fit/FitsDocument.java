package kerfwright.validation.fit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.physics.cutting.BladedCutting;
import kerfwright.planner.heat.HeatInputs;

/** What the calibration findings say of the constants that are said to be fitted. */
final class FitsDocument {
  private static final int REDRAWS = 40;
  private static final long SEED = 1;

  private FitsDocument() {}

  static String text(String command) {
    StringBuilder md = new StringBuilder("# Fits\n\nGenerated; do not edit. Made by\n\n    ");
    md.append(command).append("\n\n");
    md.append("Only findings of calibration sources are used (docs/VALIDATION.md names them).");
    md.append(" Intervals are the 5th to 95th percentile of ").append(REDRAWS);
    md.append(" fits, each with the conditions a paper does not tell drawn anew from their");
    md.append(" ranges. The constants in the code are not changed by this: it says what the");
    md.append(" data would put in their place.\n");
    heat(md);
    dry(md);
    abrasive(md);
    blades(md);
    rubbing(md);
    return md.toString();
  }

  private static void heat(StringBuilder md) {
    md.append("\n## Share of heat entering the tooth, and the spray\n\n");
    md.append("| rows | heat share | in the code | spray at 50 mL/min, W/(m2 K) | in the code |");
    md.append(" miss before, K | miss after, K |\n|---|---|---|---|---|---|---|\n");
    List<EvidenceCase> dry = Calibration.cases("V2a", "V6d1", "V6d3", "V6d4");
    List<EvidenceCase> wet = Calibration.cases("V2b", "V2c", "V2d", "V6w1", "V6w3", "V6w4");
    List<EvidenceCase> blades = Calibration.cases("V23a", "V23b", "V23c");
    List<EvidenceCase> allDry = new ArrayList<>(dry);
    allDry.addAll(blades);
    List<EvidenceCase> all = new ArrayList<>(allDry);
    all.addAll(wet);
    heat(md, "diamond, dry", dry, false);
    heat(md, "blades, dry", blades, false);
    heat(md, "all dry, spray not touched by them", allDry, false);
    heat(md, "dry and wet, spray kept", all, false);
    heat(md, "dry and wet, spray fitted too", all, true);
    md.append(
        "\nMiss is the root mean square over the sources, before and after. The spray is hardly");
    md.append(
        " fixed by the data: above some thousands the surface is held at the temperature of the");
    md.append(" water, and the pulp feels no more of it.\n");
  }

  private static void heat(
      StringBuilder md, String name, List<EvidenceCase> cases, boolean sprayToo) {
    HeatShareFit.Result r = new HeatShareFit(cases, sprayToo).fit(REDRAWS, SEED);
    md.append("| ").append(name).append(" | ").append(fitted(r.heatShare())).append(" | ");
    md.append(figure(HeatInputs.TYPICAL.heatShare())).append(" | ");
    md.append(sprayToo ? fitted(r.sprayWPerM2K()) : "-").append(" | ");
    md.append(figure(HeatInputs.TYPICAL.sprayAt50MlWPerM2K())).append(" | ");
    md.append(figure(r.rmsBeforeK())).append(" | ").append(figure(r.rmsAfterK()));
    md.append(" |\n");
  }

  private static void dry(StringBuilder md) {
    List<DryRiseStudy.LeftOut> all = new DryRiseStudy().leaveOneOut();
    md.append("\n## Dry rise of the pulp, each study left out\n\n");
    md.append(
        "The share is fitted to the other studies, of every role; no constant is set here. Misses are");
    md.append(" root mean squares of logarithms, said as factors.");
    md.append("\n\n| study left out | published mean, K | model, K | mean of the others, K |");
    md.append(
        " miss of the model, factor | miss of the mean, factor |\n|---|---|---|---|---|---|\n");
    for (DryRiseStudy.LeftOut one : all) {
      md.append("| ").append(one.source().replaceAll("[^a-z0-9-]+|SourceKey|value", " ").trim());
      for (double value :
          new double[] {
            one.publishedK(),
            one.modelK(),
            one.othersK(),
            Math.exp(one.modelMiss()),
            Math.exp(one.othersMiss())
          }) {
        md.append(" | ").append(figure(value));
      }
      md.append(" |\n");
    }
    double model = DryRiseStudy.rms(all, DryRiseStudy.LeftOut::modelMiss);
    double mean = DryRiseStudy.rms(all, DryRiseStudy.LeftOut::othersMiss);
    md.append("\nRoot mean square over the studies: model a factor of ")
        .append(figure(Math.exp(model)));
    md.append(", mean of the others a factor of ").append(figure(Math.exp(mean)));
    md.append(". The model ");
    md.append(
        model < mean
            ? "tells more of a dry test than the mean of the others does.\n"
            : "tells no more of a dry test than the mean of the others does: time, load and"
                + " dentine left, which the papers do not tell, decide more than what it knows.\n");
  }

  private static void abrasive(StringBuilder md) {
    md.append("\n## Abrasive cutting: whole contact and crack volume\n\n");
    md.append("| finding | factor on the whole-contact constant |\n|---|---|\n");
    EvidenceCase enamel = Calibration.one("DC013");
    EvidenceCase mica = Calibration.one("DC022");
    Fitted slow = AbrasiveFit.factor(enamel, REDRAWS, SEED);
    Fitted fast = AbrasiveFit.factor(mica, REDRAWS, SEED);
    md.append("| DC013, human enamel | ").append(fitted(slow)).append(" |\n");
    md.append("| DC022, machinable glass-ceramic | ").append(fitted(fast)).append(" |\n");
    md.append("| both, geometric mean | ");
    md.append(figure(Math.sqrt(slow.best() * fast.best())));
    md.append("; the two differ by a factor of ").append(figure(fast.best() / slow.best()));
    md.append(" |\n\nThe published rates stand as 1 to ");
    md.append(figure(AbrasiveFit.publishedRatio(enamel, mica)));
    double[] bounds = AbrasiveFit.bounds(enamel, mica);
    md.append(". At typical conditions the model gives 1 to ").append(figure(bounds[0]));
    md.append(" if grains only cracked the work and 1 to ").append(figure(bounds[1]));
    md.append(" if they only ploughed it. The crack volume moves the model between these two, so");
    md.append(
        Math.max(bounds[0], bounds[1]) < AbrasiveFit.publishedRatio(enamel, mica)
            ? " no value of it, with any whole contact, meets both findings: the gap lies in the"
                + " untold conditions or in what the model leaves out. Order of magnitude only.\n"
            : " a value of it could meet both.\n");
  }

  private static void blades(StringBuilder md) {
    BladeFit fit = new BladeFit(Calibration.one("DC066"));
    md.append("\n## Blades: ploughing and wear of the edge\n\n");
    md.append("One finding (DC066) tells ").append(figure(fit.wantedMm3()));
    md.append(" mm3 of glass in 30 minutes; the model cuts ").append(figure(fit.computedMm3()));
    md.append(" mm3, and would cut ").append(figure(fit.unwornMm3()));
    md.append(" mm3 if the edge did not wear. Now ").append(figure(100 * fit.chipShare()));
    md.append(" % of the edge's work lifts a chip; ploughing less can raise the rate at most");
    md.append(" by a factor of ").append(figure(1 / fit.chipShare())).append(".\n\n");
    md.append(
        "| factor on the wear of the edge | factor on the rate that then meets the finding |");
    md.append("\n|---|---|\n");
    for (double wear : new double[] {1, 0.1, 0.03, 0.01, 0}) {
      double rate = fit.rateFactor(wear);
      md.append("| ").append(figure(wear)).append(" | ");
      md.append(rate > 1e6 ? "beyond a million" : figure(rate)).append(" |\n");
    }
    md.append("\nOne figure cannot fix two constants: no interval is given.\n");
  }

  private static void rubbing(StringBuilder md) {
    RubbingFit fit = new RubbingFit(Calibration.cases("V23a", "V23b", "V23c"));
    Fitted ratio = fit.fit(REDRAWS, SEED);
    md.append("\n## Blades: force ratio of an edge that only rubs\n\n");
    md.append("| findings | force ratio | in the code |\n|---|---|---|\n| V23a to V23c | ");
    md.append(fitted(ratio)).append(" | ").append(figure(BladedCutting.rubbingRatio()));
    md.append(" |\n\n| blades | rise over that of 6, published | fitted | in the code |\n");
    md.append("|---|---|---|---|\n");
    double[] published = fit.published();
    double[] best = fit.rises(ratio.best());
    double[] now = fit.rises(BladedCutting.rubbingRatio());
    int[] blades = {6, 12, 40};
    for (int i = 0; i < blades.length; i++) {
      md.append("| ").append(blades[i]).append(" | ").append(figure(published[i])).append(" | ");
      md.append(figure(best[i])).append(" | ").append(figure(now[i])).append(" |\n");
    }
    md.append(
        "\nThe data ask for no force at all from an edge that rubs, and even that falls less");
    md.append(" with the number of blades than published. A ratio below that of sliding is not to");
    md.append(" be had, so that the code keeps 0.2; the rest is left out by the model.\n");
  }

  private static String fitted(Fitted f) {
    return figure(f.best()) + " (" + figure(f.low()) + " to " + figure(f.high()) + ")";
  }

  private static String figure(double value) {
    if (Double.isInfinite(value) || Double.isNaN(value)) {
      return "no finite value";
    }
    return Math.abs(value) < 1e-4
        ? "0"
        : String.format(
            Locale.ROOT,
            "%s",
            new BigDecimal(value).round(new MathContext(2)).stripTrailingZeros().toPlainString());
  }
}
