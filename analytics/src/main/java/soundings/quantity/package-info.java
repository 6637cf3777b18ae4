/** Numbers as measured: exact, below, above, between; and intervals. Knows no substance, no file. */
@NullMarked
package soundings.quantity;

import org.jspecify.annotations.NullMarked;
