package kerfwright.app.today;

import java.time.LocalTime;

/**
 * An appointment still to come today, as the page shows it.
 *
 * @param start when it starts
 * @param what tooth, procedure and case in words
 * @param tray what is ready or missing, in words
 * @param missing how many instruments are missing, 0 for a full tray
 * @param link where its plan or tray is shown
 */
public record Visit(LocalTime start, String what, String tray, int missing, String link) {}
