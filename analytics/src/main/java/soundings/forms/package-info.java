/**
 * Workbooks a keeper fills in: the companion of a log, pre-filled with what was understood, and a blank log to begin with. Comes in: a
 * log as read; goes out: an xlsx. A {@link soundings.forms.Form} says what a sheet asks for; start at
 * {@link soundings.forms.SetupWorkbook} and {@link soundings.forms.StarterWorkbook}.
 */
@NullMarked
package soundings.forms;

import org.jspecify.annotations.NullMarked;
