/** Commands, exit codes, wiring: the only package that prints, reads the clock and decides file names. */
@NullMarked
package soundings.cli;

import org.jspecify.annotations.NullMarked;
