/** The practice's own pace, learned from its log, on a page and in its plans. */
@NullMarked
package kerfwright.app.learning;

import org.jspecify.annotations.NullMarked;
