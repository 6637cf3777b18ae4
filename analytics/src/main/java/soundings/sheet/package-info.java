/** A workbook as plain values: what every non-empty cell holds and where it stands, nothing interpreted. Start at {@link soundings.sheet.Book}. */
@NullMarked
package soundings.sheet;

import org.jspecify.annotations.NullMarked;
