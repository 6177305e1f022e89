package kerfwright.app.web;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseReader;
import kerfwright.app.casefile.UsualStackFindings;
import kerfwright.app.chairside.RunPlans;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.input.Node;
import kerfwright.app.teaching.CasePlans;
import kerfwright.app.web.caseform.CaseForm;
import kerfwright.app.web.caseform.FilledForm;
import kerfwright.planner.FixedSteps;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.Planner;
import kerfwright.planner.WhatIf;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockForPlanning;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * Makes the plans of the pages. The last few are remembered, because page, card and JSON of a plan
 * are asked for one after the other; nothing depends on it.
 */
final class PlanService implements CasePlans {
  static final int SAMPLES = 256;
  static final long SEED = 1;
  private static final int QUESTION_SAMPLES = 64;
  private static final int FEW_SAMPLES = 1;
  private static final int REMEMBERED = 32;

  private final Wiring wiring;
  private final Drawer drawer;
  private final Supplier<OwnPace> pace;
  private final CaseReader reader;
  private volatile @Nullable Stock stock;
  private final ComputedOnce<Asked> plans = ComputedOnce.leavingACore();
  private final ComputedOnce<Asked> opened = ComputedOnce.leavingACore();
  private final Map<Asked, CutPlan> recent = newest();
  private final Map<Asked, Optional<WhatIf>> questions = newest();

  PlanService(Wiring wiring, Drawer drawer, Supplier<OwnPace> pace) {
    this.pace = pace;
    this.wiring = wiring;
    this.drawer = drawer;
    this.reader = new CaseReader(wiring.cases());
  }

  private static <T> Map<Asked, T> newest() {
    return Collections.synchronizedMap(
        new LinkedHashMap<Asked, T>(16, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<Asked, T> eldest) {
            return size() > REMEMBERED;
          }
        });
  }

  Drawer drawer() {
    return drawer;
  }

  CutCase read(Node.Mapping node) throws BadInput {
    return reader.read(node, "case");
  }

  @Override
  public CutCase read(Map<String, List<String>> fields) throws BadInput {
    return read(CaseForm.of(fields).toNode());
  }

  @Override
  public CutPlan plan(CutCase cutCase) {
    Asked asked = new Asked(cutCase, drawer.revision(), pace.get());
    CutPlan known = recent.get(asked);
    if (known != null) {
      return known;
    }
    return plans.get(
        asked,
        () -> {
          CutPlan made = made(cutCase, SAMPLES, SEED);
          recent.put(asked, made);
          return made;
        },
        Caller::hasGone);
  }

  /** A first look, quick enough to follow a hand: fewer samples, heat by the column alone. */
  CutPlan look(CutCase cutCase) {
    Asked asked = new Asked(cutCase, drawer.revision(), pace.get());
    CutPlan known = recent.get(asked);
    return known != null
        ? known
        : UsualStackFindings.addTo(
            Planner.plan(cutCase, clean(), options(QUESTION_SAMPLES, SEED, true)));
  }

  @Override
  public Optional<WhatIf> whatIf(CutCase cutCase) {
    Asked asked = new Asked(cutCase, drawer.revision(), pace.get());
    Optional<WhatIf> known = questions.get(asked);
    if (known != null) {
      return known;
    }
    return opened.get(
        asked,
        () -> {
          Optional<WhatIf> made =
              Planner.whatIf(cutCase, clean(), options(QUESTION_SAMPLES, SEED, false));
          questions.put(asked, made);
          return made;
        },
        Caller::hasGone);
  }

  CutPlan plan(CutCase cutCase, int samples, long seed) {
    Asked asked = new Asked(cutCase, drawer.revision(), pace.get(), samples, seed);
    return plans.get(asked, () -> made(cutCase, samples, seed), Caller::hasGone);
  }

  private CutPlan made(CutCase cutCase, int samples, long seed) {
    return wiring.plans().plan(cutCase, clean(), options(samples, seed, false));
  }

  /** A quick look what a plan would be with other instruments. */
  CutPlan plan(CutCase cutCase, DrawerSnapshot others) {
    return wiring.plans().plan(cutCase, others, options(FEW_SAMPLES, SEED, true));
  }

  /** With the practice's own pace. */
  private PlanOptions options(int samples, long seed, boolean quick) {
    return new PlanOptions(samples, seed, quick, pace.get());
  }

  /** The same for runs at the chair. */
  RunPlans runs() {
    return new RunPlans() {
      @Override
      public CutCase read(Map<String, List<String>> fields) throws BadInput {
        CutCase asked = PlanService.this.read(fields);
        if (asked.filled("case").isPresent()) {
          // what is run goes into the record, and the record needs the practice's own reference
          Message expected = Message.of("fault.missing", Message.of("fault.case-reference"));
          throw new BadInput(List.of(new Fault("case", 0, "case", expected, null)));
        }
        return asked;
      }

      @Override
      public String query(CutCase cutCase) {
        return FilledForm.of(cutCase).query();
      }

      @Override
      public CutPlan plan(CutCase cutCase) {
        return PlanService.this.plan(cutCase);
      }

      @Override
      public CutPlan rest(CutCase cutCase, DrawerSnapshot stock, FixedSteps settled) {
        return UsualStackFindings.addTo(
            Planner.plan(cutCase, stock, options(SAMPLES, SEED, false), settled));
      }
    };
  }

  /** The clean stock; read again only when something has changed, whichever process changed it. */
  DrawerSnapshot clean() {
    long revision = drawer.revision();
    Stock known = stock;
    if (known == null || known.revision() != revision) {
      known = new Stock(revision, StockForPlanning.of(drawer));
      stock = known;
    }
    return known.snapshot();
  }

  /**
   * A case, and the state of the drawer, the practice's pace, samples and seed it is asked with.
   */
  private record Asked(CutCase cutCase, long revision, OwnPace pace, int samples, long seed) {
    Asked(CutCase cutCase, long revision, OwnPace pace) {
      this(cutCase, revision, pace, SAMPLES, SEED);
    }
  }

  private record Stock(long revision, DrawerSnapshot snapshot) {}
}
