package kerfwright.physics.heat;

/**
 * Temperatures on the axis against time. The arrays belong to whoever asked for the computation.
 *
 * @param timesS output times, the first one output interval after the start
 * @param probesC temperature at each depth asked for, at each output time
 * @param floorC temperature of the floor
 * @param floorDepthMm depth of the floor
 * @param peakProbesC highest temperature at each depth over all time steps
 * @param peakFloorC highest temperature of the floor over all time steps
 * @param steps time steps taken
 */
public record ColumnSeries(
    double[] timesS,
    double[][] probesC,
    double[] floorC,
    double[] floorDepthMm,
    double[] peakProbesC,
    double peakFloorC,
    int steps) {}
