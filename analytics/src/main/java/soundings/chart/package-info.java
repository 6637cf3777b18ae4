/**
 * Draws chart specs as SVG text. XChart works out where bands, lines and marks go and paints them on a canvas of ours;
 * axes, words and titles are written here, as text that can be searched and read aloud. Where the machine has no fonts
 * XChart cannot work at all, and the same shapes are worked out here. Start at {@link soundings.chart.Charts}.
 */
@NullMarked
package soundings.chart;

import org.jspecify.annotations.NullMarked;
