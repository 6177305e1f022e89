package kerfwright.catalogue.operation;

import java.util.List;

/**
 * How an operation is run.
 *
 * @param speeds kinds of handpiece, preferred first
 * @param leastRpm lowest speed under load
 * @param mostRpm highest speed under load
 * @param leastN lightest load
 * @param mostN firmest load
 * @param water what it asks of the water
 * @param leastWaterMlPerMin least flow where told, else 0
 * @param stroke the stroke's word of the contract: against-rotation, with-rotation, axial,
 *     brushing; empty where the models choose
 * @param way how the hand leads it, a key of the operation texts (finer word)
 * @param contactS longest contact before lifting, s, where told, else 0
 * @param pauseS pause after it, s, where told, else 0
 */
public record Operating(
    List<SpeedClass> speeds,
    double leastRpm,
    double mostRpm,
    double leastN,
    double mostN,
    WaterRule water,
    double leastWaterMlPerMin,
    String stroke,
    String way,
    double contactS,
    double pauseS) {}
