package kerfwright.catalogue.handpiece;

import java.util.List;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.physics.cutting.Drive;
import kerfwright.quantity.SourceKey;

/**
 * A handpiece: what shank it takes and how it drives.
 *
 * @param id id used in files, e.g. electric-1to5
 * @param label name for people
 * @param shank the shank its chuck holds
 * @param drive speed and torque at the instrument
 * @param sources where the figures come from
 */
public record Handpiece(
    String id, String label, ShankType shank, Drive drive, List<SourceKey> sources) {}
