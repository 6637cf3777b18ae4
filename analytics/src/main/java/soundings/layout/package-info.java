/**
 * From cells to meaning: finds the tables of a sheet, what their columns hold and the dates they run by, and hands out
 * each cell as an entry, a label or an issue. Start at {@link soundings.layout.Layouts}. Knows no file format.
 */
@NullMarked
package soundings.layout;

import org.jspecify.annotations.NullMarked;
