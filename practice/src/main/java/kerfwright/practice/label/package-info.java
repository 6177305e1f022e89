/**
 * What is printed on packages and labels: element strings of makers, and the practice's own codes.
 */
@NullMarked
package kerfwright.practice.label;

import org.jspecify.annotations.NullMarked;
