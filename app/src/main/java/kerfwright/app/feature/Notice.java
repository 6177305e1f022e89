package kerfwright.app.feature;

/**
 * Something that needs attention today.
 *
 * @param urgent true where work stops without it
 * @param text what is the matter, one sentence
 * @param link where it is put right
 * @param action what the link does, a few words
 */
public record Notice(boolean urgent, String text, String link, String action) {}
