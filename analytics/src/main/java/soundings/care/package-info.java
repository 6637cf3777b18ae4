/**
 * Tanks that are run in, animals that are treated, animals that are moved: from the history, the keeper's notes and two sheets of the
 * companion workbook. It records and reckons; it prescribes nothing. Start at {@link soundings.care.Caring}.
 */
@NullMarked
package soundings.care;

import org.jspecify.annotations.NullMarked;
