package kerfwright.planner.plan;

import kerfwright.quantity.Message;

/**
 * How deep the chamber lies, from a landmark the dentist can touch.
 *
 * @param landmark what it is measured from
 * @param mm how deep the roof lies below it
 * @param plusMinusMm how far the true depth may lie from that
 * @param basis how it is known, an id: film, usual, ...
 * @param stopMarkMm where bulk cutting stops
 * @param filmAtMm where a radiograph is taken if nothing has opened
 */
public record DepthFrom(
    Message landmark,
    double mm,
    double plusMinusMm,
    String basis,
    double stopMarkMm,
    double filmAtMm) {}
