/** Seawater chemistry: parameters, the scales they are written in, and published relations named {@code quantity_SOURCE}. Pure; facts come in as a {@link soundings.chemistry.Reference}. */
@NullMarked
package soundings.chemistry;

import org.jspecify.annotations.NullMarked;
