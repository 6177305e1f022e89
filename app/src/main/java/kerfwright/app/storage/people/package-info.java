/** Accounts, sessions, codes, tokens and the trail in a database. */
@NullMarked
package kerfwright.app.storage.people;

import org.jspecify.annotations.NullMarked;
