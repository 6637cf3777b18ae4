/** The results file: every reading, dose, estimate and advice of one run as JSON, for programs. Its schema ships beside this code. */
@NullMarked
package soundings.results;

import org.jspecify.annotations.NullMarked;
