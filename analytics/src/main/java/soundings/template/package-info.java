/**
 * Runs a notebook's template, which may come from a stranger, to Markdown: no class, no file, no network, bounded
 * output, and for templates that do not ship with the program a process of its own with bounded memory and time.
 * Comes in: a {@link soundings.template.Source} and a model of maps, lists, texts and numbers; goes out:
 * {@link soundings.template.Printed}. Freemarker is used here and nowhere else.
 */
@NullMarked
package soundings.template;

import org.jspecify.annotations.NullMarked;
