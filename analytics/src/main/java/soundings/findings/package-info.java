/** Everything one run found, handed to the notebooks and the results file; nothing is computed after this. */
@NullMarked
package soundings.findings;

import org.jspecify.annotations.NullMarked;
