package kerfwright.planner.plan;

import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.quantity.Message;

/**
 * The next best choice for a step.
 *
 * @param step order of the step
 * @param instrument the other instrument
 * @param handpieceId its handpiece
 * @param why what it would cost, one sentence
 * @param costRatio its cost over the chosen one's
 * @param time its time over the chosen one's, with the scatter within one practice
 */
public record RunnerUp(
    int step,
    DrawerInstrument instrument,
    String handpieceId,
    Message why,
    double costRatio,
    RatioBand time) {}
