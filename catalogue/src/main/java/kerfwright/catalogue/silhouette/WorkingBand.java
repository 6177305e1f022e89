package kerfwright.catalogue.silhouette;

/**
 * A stretch of the head that carries abrasive or blades.
 *
 * @param fromMm nearer end, from the tip
 * @param toMm farther end
 */
public record WorkingBand(double fromMm, double toMm) {}
