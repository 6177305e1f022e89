/** The register of sources. */
@NullMarked
package kerfwright.catalogue.source;

import org.jspecify.annotations.NullMarked;
