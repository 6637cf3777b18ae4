/** The companion workbook as plain values: volumes, fresh mix, targets, additives, kits, pumps, corrections, preferences. */
@NullMarked
package soundings.setup;

import org.jspecify.annotations.NullMarked;
