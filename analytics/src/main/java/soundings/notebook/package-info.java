/**
 * A report as a value: sections of prose, tables, charts, workings and actions, before anyone decides how it looks.
 * Comes in: {@link soundings.findings.Findings} and a template; goes out: a {@link soundings.notebook.Notebook}.
 * Knows no HTML, no workbook, no drawing.
 */
@NullMarked
package soundings.notebook;

import org.jspecify.annotations.NullMarked;
