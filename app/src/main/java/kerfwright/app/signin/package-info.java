/** Pages of the people themselves: sign in and out, lock, switch, own password; who may come in. */
@NullMarked
package kerfwright.app.signin;

import org.jspecify.annotations.NullMarked;
