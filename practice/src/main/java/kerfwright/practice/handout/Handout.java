package kerfwright.practice.handout;

import java.time.Instant;
import java.util.UUID;

/**
 * A handout as it was kept at one time. A change adds a version; none is ever written over.
 *
 * @param id names the handout in all its versions
 * @param version 1 for the first
 * @param at when it was kept, to the microsecond
 * @param subject the address of what it is about; drawings and figures are computed from it anew
 * @param title its title, in the practice's words
 * @param words the practice's own words, may be empty
 */
public record Handout(
    UUID id, int version, Instant at, String subject, String title, String words) {}
