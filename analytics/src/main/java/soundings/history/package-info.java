/** The log per tank and parameter: ordered, one unit, every reading used or set aside with its reason, doses as courses. */
@NullMarked
package soundings.history;

import org.jspecify.annotations.NullMarked;
