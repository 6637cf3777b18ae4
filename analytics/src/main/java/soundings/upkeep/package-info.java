/** What the log holds besides the water: jobs put off, light, animals, and the testing itself. Starts at {@link soundings.upkeep.Upkeep}. */
@NullMarked
package soundings.upkeep;

import org.jspecify.annotations.NullMarked;
