/**
 * A notebook as a spreadsheet: tables, native charts and workings that recalculate. Text of a log never becomes a formula here. Start at
 * {@link soundings.xlsx.XlsxReport}; {@link soundings.xlsx.ReportAnswers} reads back what a mentor wrote into one.
 */
@NullMarked
package soundings.xlsx;

import org.jspecify.annotations.NullMarked;
