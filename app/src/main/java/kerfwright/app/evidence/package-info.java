/** Shows published findings against what the models compute: text, JSON and the document. */
@NullMarked
package kerfwright.app.evidence;

import org.jspecify.annotations.NullMarked;
