package kerfwright.planner.uncertainty;

import kerfwright.planner.plan.Estimate;

/** The spread of one step's figures. */
public record StepSpread(
    Estimate underLoadRpm,
    Estimate rimMPerS,
    Estimate loadN,
    Estimate fromMm,
    Estimate toMm,
    Estimate removalMm3PerMin,
    Estimate powerW,
    Estimate raUm,
    Estimate timeS,
    Estimate lives,
    Estimate cutS) {}
