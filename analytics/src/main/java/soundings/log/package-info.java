/** What a workbook was understood to say: entries, how each column was read, and an issue for whatever was not. Start at {@link soundings.log.Log}. */
@NullMarked
package soundings.log;

import org.jspecify.annotations.NullMarked;
