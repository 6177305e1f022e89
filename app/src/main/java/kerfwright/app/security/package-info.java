/** Who may call what: everything is denied that no route allows. */
@NullMarked
package kerfwright.app.security;

import org.jspecify.annotations.NullMarked;
