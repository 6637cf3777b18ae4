/**
 * From a file to a {@link soundings.sheet.Book}, whatever program saved it. Start at {@link soundings.workbook.WorkbookReader}.
 * What a file holds is told by its first bytes, not by its name. Files are read whole, never written to and never kept open.
 */
@NullMarked
package soundings.workbook;

import org.jspecify.annotations.NullMarked;
