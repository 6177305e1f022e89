package kerfwright.validation.fit;

/**
 * A fitted parameter with the interval in which it lies for 90 percent of the assumed conditions.
 *
 * @param low 5th percentile
 * @param best fitted at typical conditions
 * @param high 95th percentile
 */
record Fitted(double low, double best, double high) {}
