package kerfwright.app.evidence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.evidence.CaseLists;
import kerfwright.catalogue.evidence.Condition;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.evidence.Family;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.catalogue.evidence.SourceRole;
import kerfwright.catalogue.evidence.SourceRoles;
import kerfwright.planner.evidence.Compared;
import kerfwright.planner.evidence.Coverage;
import kerfwright.planner.evidence.EvidenceReport;
import kerfwright.planner.evidence.Standing;
import kerfwright.planner.evidence.Summary;
import kerfwright.quantity.SourceKey;

/** The comparison as the document docs/VALIDATION.md. */
public final class EvidenceDocument {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);

  private EvidenceDocument() {}

  /** The document; what else is checked follows the comparison as it is handed in. */
  public static String of(EvidenceReport report, String command, String otherChecks) {
    StringBuilder md = new StringBuilder();
    md.append("# Validation\n\n");
    md.append("Generated; do not edit. Made by\n\n    ").append(command).append("\n\n");
    md.append(
            "Every published finding of the catalogue stands here against what the planner's own models"
                + " compute for it, with ")
        .append(EvidenceReport.SAMPLES);
    md.append(" samples (")
        .append(EvidenceReport.HEAT_SAMPLES)
        .append(
            " for heat) over the conditions of the test, the properties of the materials and what"
                + " published figures lie off the models, within a study and between studies."
                + " Whatever is drawn is drawn by its name: another finding or material moves no row."
                + " Intervals are the 5th to the 95th percentile. A figure is inside when the"
                + " published value (its typical value, or the middle of its range) lies in the"
                + " interval; a direction is right when it holds at typical values. Conditions that"
                + " a paper does not tell are assumed, with their range; a tooth whose temperature"
                + " is not given began at 22 or 36 degC, half each.\n\n");
    md.append("## What it comes to\n\n");
    EvidenceWords.closing(ENGLISH, report).forEach(s -> md.append("- ").append(s).append('\n'));
    coverage(md, report);
    studies(md, report);
    section(md, "Validation", EvidenceRow.Role.VALIDATION, report);
    section(md, "Calibration", EvidenceRow.Role.CALIBRATION, report);
    misses(md, report);
    setUps(md, report);
    notComputed(md, report);
    roles(md);
    md.append(otherChecks);
    return md.toString();
  }

  private static void section(
      StringBuilder md, String title, EvidenceRow.Role role, EvidenceReport report) {
    md.append("\n## ").append(title).append("\n\n");
    if (role == EvidenceRow.Role.CALIBRATION) {
      md.append(
          "A constant rests on these sources; they vouch for nothing and are not counted.\n\n");
    }
    md.append(
        "| case | compared | published | computed | error of its ends | verdict | set-up | source |\n");
    md.append("|---|---|---|---|---|---|---|---|\n");
    for (Compared c : report.compared()) {
      if (c.asked().row().role() == role) {
        SetUp second = c.asked().second();
        row(
            md,
            c.asked().id(),
            c.asked().statement(),
            EvidenceWords.published(ENGLISH, c.asked())
                + (c.asked().remark().isEmpty() ? "" : "; " + c.asked().remark()),
            EvidenceWords.computed(ENGLISH, c),
            EvidenceWords.percent(c.monteCarlo()),
            c.verdict().met()
                ? EvidenceWords.verdict(ENGLISH, c)
                : "**" + EvidenceWords.verdict(ENGLISH, c) + "**",
            c.asked().first().id() + (second == null ? "" : ", " + second.id()),
            sources(c.asked().row()));
      }
    }
  }

  private static void coverage(StringBuilder md, EvidenceReport report) {
    md.append("\n## Studies left out\n\n");
    md.append(
        "A published figure is taken to lie off the models by a part that its whole study shares and"
            + " by a part of its own. Both are fitted on calibration studies (the table packaged as"
            + " evidence/discrepancy.csv). To test the bands, each study is predicted from the"
            + " calibration studies other than itself. The constants of the models themselves rest"
            + " on the calibration studies and are not fitted anew without one of them, so that the"
            + " validation studies are the harder test. Figures of one study are not independent:"
            + " the binomial interval is narrower than it should be. The interval score (less is"
            + " better; width, and twenty times whatever a figure lies outside) is held against that"
            + " of bands about the mean of the other studies, drawn the same way without any"
            + " model.\n\n");
    md.append(
        "| family | between studies | degrees of freedom | within a study | from | left out | median"
            + " band | interval score | of the mean | judged |\n|---|---|---|---|---|---|---|---|---|---|\n");
    for (Coverage c : report.coverage()) {
      Family family = c.family();
      if (family == null) {
        row(
            md,
            "all",
            "",
            "",
            "",
            "",
            EvidenceWords.covered(ENGLISH, c),
            "",
            scored(c.score()),
            scored(c.meanScore()),
            EvidenceWords.judged(ENGLISH, c));
      } else {
        Discrepancy d = report.discrepancies().of(family);
        row(
            md,
            EvidenceWords.family(ENGLISH, family),
            spread(family, d.between()),
            EvidenceWords.figure(ENGLISH, d.freedom()),
            spread(family, d.within()),
            d.figures() + " figures, " + d.studies() + " studies",
            EvidenceWords.covered(ENGLISH, c),
            EvidenceWords.width(ENGLISH, family, c.medianWidth()),
            scored(c.score()),
            scored(c.meanScore()),
            EvidenceWords.judged(ENGLISH, c));
      }
    }
  }

  private static String scored(double score) {
    return EvidenceWords.figure(ENGLISH, score);
  }

  private static String spread(Family family, double sd) {
    return family.logarithmic()
        ? "a factor of " + EvidenceWords.figure(ENGLISH, Math.exp(sd))
        : EvidenceWords.figure(ENGLISH, sd) + " K";
  }

  private static void studies(StringBuilder md, EvidenceReport report) {
    md.append("\n## By study\n\n");
    md.append(
        "Rows that count, by the study they come from. The last column is the share of the published"
            + " scatter that lies inside the intervals.\n\n");
    md.append("| study | rows met | with its scatter |\n|---|---|---|\n");
    for (Summary.Study study : report.summary().byStudy()) {
      row(
          md,
          study.key(),
          study.met() + " of " + study.cases(),
          EvidenceWords.percent(study.scatterInside()));
    }
    md.append("\n## Cannot fail\n\n");
    md.append("Cases that hold whatever the constants are; not counted.\n\n");
    md.append("| case | compared | why |\n|---|---|---|\n");
    for (Compared c : report.compared()) {
      if (c.standing() == Standing.BY_CONSTRUCTION) {
        row(
            md,
            c.asked().id(),
            c.asked().statement(),
            CaseLists.packaged().byConstruction().getOrDefault(c.asked().id(), ""));
      }
    }
  }

  private static String sources(EvidenceRow row) {
    return row.sources().stream().map(SourceKey::key).collect(Collectors.joining(", "));
  }

  private static void misses(StringBuilder md, EvidenceReport report) {
    md.append("\n## Every miss, and why\n\n");
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (Compared c : report.compared()) {
      if (!c.verdict().met()) {
        byReason
            .computeIfAbsent(c.asked().explanation(), e -> new ArrayList<>())
            .add(c.asked().id());
      }
    }
    byReason.forEach(
        (reason, cases) ->
            md.append("- ")
                .append(String.join(", ", cases))
                .append(": ")
                .append(reason)
                .append('\n'));
  }

  private static void setUps(StringBuilder md, EvidenceReport report) {
    Map<String, SetUp> used = new LinkedHashMap<>();
    for (Compared c : report.compared()) {
      used.put(c.asked().first().id(), c.asked().first());
      SetUp second = c.asked().second();
      if (second != null) {
        used.put(second.id(), second);
      }
    }
    md.append("\n## Set-ups\n\n");
    md.append("| id | test | told | assumed where the paper is silent |\n|---|---|---|---|\n");
    for (SetUp s : used.values()) {
      row(
          md,
          s.id(),
          s.label(),
          EvidenceWords.conditions(ENGLISH, s, true),
          s.ordered().stream()
              .filter(c -> !c.told())
              .map(EvidenceDocument::assumed)
              .collect(Collectors.joining("; ")));
    }
  }

  private static String assumed(Condition c) {
    return EvidenceWords.condition(ENGLISH, c)
        + (c.low() == c.high() ? "" : ", typically " + EvidenceWords.figure(ENGLISH, c.typical()));
  }

  private static void notComputed(StringBuilder md, EvidenceReport report) {
    md.append(
        "\n## Findings that are not computed\n\n| row | finding | role | why |\n|---|---|---|---|\n");
    Evidence evidence = Evidence.packaged();
    report
        .notComputed()
        .forEach(
            (id, why) ->
                row(md, id, evidence.get(id).sentence(), evidence.get(id).role().id(), why));
  }

  private static void roles(StringBuilder md) {
    md.append("\n## Roles of the sources\n\n");
    md.append("A source is wholly one or the other, decided before anything was fitted.\n\n");
    md.append("| source | role | reason |\n|---|---|---|\n");
    for (SourceRole role : SourceRoles.packaged().all()) {
      row(md, role.source().key(), role.role().id(), role.reason());
    }
  }

  private static void row(StringBuilder md, String... cells) {
    md.append("| ");
    for (int i = 0; i < cells.length; i++) {
      md.append(i == 0 ? "" : " | ").append(cells[i].replace("|", "\\|"));
    }
    md.append(" |\n");
  }
}
