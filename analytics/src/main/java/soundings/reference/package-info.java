/** Loads the fact tables (CSV, a source a row) strictly into a {@link soundings.chemistry.Reference}; start at {@link soundings.reference.ReferenceTables}. */
@NullMarked
package soundings.reference;

import org.jspecify.annotations.NullMarked;
