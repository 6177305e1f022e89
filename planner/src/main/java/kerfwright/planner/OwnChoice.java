package kerfwright.planner;

import kerfwright.planner.plan.Stroke;

/**
 * What somebody would do for one operation.
 *
 * @param instrument id of the instrument
 * @param handpiece id of the handpiece
 * @param setRpm speed set
 * @param stroke how it is led
 * @param waterMlPerMin water
 */
public record OwnChoice(
    String instrument, String handpiece, double setRpm, Stroke stroke, double waterMlPerMin) {}
