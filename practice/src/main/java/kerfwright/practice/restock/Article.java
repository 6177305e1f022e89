package kerfwright.practice.restock;

import kerfwright.catalogue.instrument.InstrumentProperties;

/**
 * What pieces have in common that are bought as one thing.
 *
 * @param properties what they are
 * @param singleUse never reprocessed
 */
public record Article(InstrumentProperties properties, boolean singleUse) {}
