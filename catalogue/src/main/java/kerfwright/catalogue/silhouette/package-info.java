/** Outlines of instruments as points in millimetres, computed from shape and size. */
@NullMarked
package kerfwright.catalogue.silhouette;

import org.jspecify.annotations.NullMarked;
