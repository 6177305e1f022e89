/** Lists of instruments from elsewhere: tables read, columns mapped, rows understood. */
@NullMarked
package kerfwright.app.stocklist;

import org.jspecify.annotations.NullMarked;
