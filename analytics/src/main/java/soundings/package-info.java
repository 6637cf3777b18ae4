/** Soundings: a reef keeper's test log in, a month's notebook report out. Start at {@link soundings.Analysis}. */
@NullMarked
package soundings;

import org.jspecify.annotations.NullMarked;
