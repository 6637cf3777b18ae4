/** Level, use and drift of each test of each tank by a mass balance, with 90 % intervals, or why not. */
@NullMarked
package soundings.estimate;

import org.jspecify.annotations.NullMarked;
