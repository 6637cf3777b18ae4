/** The sample workbooks' generator: seeded, and it states the truth it wrote. Everything in it is invented. */
@NullMarked
package soundings.samples;

import org.jspecify.annotations.NullMarked;
