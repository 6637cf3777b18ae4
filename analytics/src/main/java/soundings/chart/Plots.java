package soundings.chart;

import java.util.List;
import soundings.notebook.Layer;

/** Layers to shapes: by XChart, or where that cannot run on this machine, by our own arithmetic. */
final class Plots {
    /** Set by the first failure: what is missing from a machine does not come back between two charts. */
    private static volatile boolean xchartWorks = true;

    private Plots() {}

    static List<Shapes> of(List<Layer> layers, Frame frame) {
        if (xchartWorks) {
            try {
                return XChartPlot.of(layers, frame);
            } catch (RuntimeException | LinkageError | InternalError missing) {
                xchartWorks = false;
            } catch (Error missingFonts) {
                if (missingFonts instanceof VirtualMachineError) {
                    throw missingFonts;
                }
                xchartWorks = false;
            }
        }
        return PlainPlot.of(layers, frame);
    }
}
