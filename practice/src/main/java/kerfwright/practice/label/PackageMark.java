package kerfwright.practice.label;

import java.util.UUID;

/**
 * The maker's code kept for an item of the drawer.
 *
 * @param item which
 * @param version grows by one with every change
 * @param code what its package says
 */
public record PackageMark(UUID item, int version, MakersCode code) {}
