/** Tables that need grouping: the one place where Tablesaw is used, built from records at the end and turned back at once. */
@NullMarked
package soundings.notebook.table;

import org.jspecify.annotations.NullMarked;
