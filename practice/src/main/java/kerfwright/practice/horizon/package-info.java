/**
 * The longer horizon: how many instruments of each type the practice's usual week needs, by
 * simulating weeks drawn from its own days.
 *
 * <p>Start with {@link kerfwright.practice.horizon.StockStudy}.
 */
@NullMarked
package kerfwright.practice.horizon;

import org.jspecify.annotations.NullMarked;
