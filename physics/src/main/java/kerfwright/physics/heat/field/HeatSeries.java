package kerfwright.physics.heat.field;

/**
 * Temperatures against time. The arrays belong to whoever asked for the computation.
 *
 * @param timesS output times, the first one output interval after the start
 * @param probesC temperature of each probe at each output time
 * @param cutAwayS when the material at each probe was cut away; infinity if it never was. From then
 *     on the probe reports the floor above or below it.
 * @param floorC temperature of the floor on the axis at each output time
 * @param floorDepthMm depth of the floor at each output time
 * @param peakProbesC highest temperature of each probe over all time steps
 * @param peakFloorC highest temperature anywhere on the floor over all time steps
 * @param balance where the heat went
 * @param mesh cells and longest step that were used
 */
public record HeatSeries(
    double[] timesS,
    double[][] probesC,
    double[] cutAwayS,
    double[] floorC,
    double[] floorDepthMm,
    double[] peakProbesC,
    double peakFloorC,
    EnergyBalance balance,
    HeatMesh mesh) {}
