package kerfwright.practice.drawer;

import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import org.jspecify.annotations.Nullable;

/**
 * What to list.
 *
 * @param words every word must stand somewhere in label, number, US size, names or place
 * @param kind only the kind of this id, of a rotary instrument or another piece; or null
 * @param shape only this family of shapes, or null
 * @param shank only this shank, or null
 * @param state only this state, or null
 * @param page first page is 0
 * @param pageSize items a page
 */
public record DrawerQuery(
    String words,
    @Nullable String kind,
    @Nullable ShapeFamily shape,
    @Nullable ShankType shank,
    @Nullable InstrumentState state,
    int page,
    int pageSize) {
  public DrawerQuery {
    words = words.strip();
    if (page < 0 || pageSize < 1 || pageSize > 1000) {
      throw new IllegalArgumentException("Page " + page + " of size " + pageSize);
    }
  }

  public static DrawerQuery all(int pageSize) {
    return new DrawerQuery("", null, null, null, null, 0, pageSize);
  }
}
