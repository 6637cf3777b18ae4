/**
 * A notebook as one HTML page: nothing loaded from elsewhere, no script, charts as inline SVG with their numbers in a
 * table beside them. Comes in: a {@link soundings.notebook.Notebook}; start at {@link soundings.html.HtmlPage}. The look
 * is {@code report-templates/style.css}.
 */
@NullMarked
package soundings.html;

import org.jspecify.annotations.NullMarked;
