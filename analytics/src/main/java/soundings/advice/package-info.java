/** What to do: doses with their working, or a typed refusal; pumps, jobs, verdicts. Nothing here reads a file or formats a number. */
@NullMarked
package soundings.advice;

import org.jspecify.annotations.NullMarked;
