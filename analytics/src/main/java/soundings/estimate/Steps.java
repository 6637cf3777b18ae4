package soundings.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import soundings.chemistry.Scale;
import soundings.log.Reading;
import soundings.quantity.Amount;

/** The step a kit's results come in, seen from the figures written: 5 for 420, 425, 415; 0.1 for 8.2, 7.9. */
final class Steps {
    private static final int ENOUGH = 4;
    /** A few may be mistyped or read between the marks. */
    private static final double SHARE = 0.9;

    private static final double[] LEADING = {5, 2, 1};

    private Steps() {}

    /** Of each kit or laboratory; see {@link #of}. */
    static double[] bySource(List<Reading> readings, Sources sources) {
        return IntStream.range(0, sources.size())
                .mapToDouble(source -> of(readings.stream()
                        .filter(r -> sources.indexOf(r.method()) == source)
                        .toList()))
                .toArray();
    }

    /** In canonical units at the usual level; 0 where too few exact results show one. */
    static double of(List<Reading> readings) {
        Map<String, List<Reading>> byScale = readings.stream()
                .filter(r -> r.amount() instanceof Amount.Exact)
                .collect(Collectors.groupingBy(r -> r.scale().id()));
        return byScale.values().stream()
                .filter(of -> of.size() >= ENOUGH)
                .mapToDouble(Steps::ofOneScale)
                .max()
                .orElse(0);
    }

    private static double ofOneScale(List<Reading> readings) {
        Scale scale = readings.get(0).scale();
        List<Double> written = new ArrayList<>();
        readings.forEach(r -> written.add(scale.written(r.amount().about())));
        // Nothing is a multiple of every step.
        written.removeIf(w -> w == 0);
        if (written.isEmpty()) {
            return 0;
        }
        double step = writtenStep(written);
        double middle = Robust.median(written);
        return Math.abs(scale.canonical(middle + step / 2) - scale.canonical(middle - step / 2));
    }

    /** The largest of 1, 2, 5 times a power of ten that nine in ten figures are multiples of. */
    static double writtenStep(List<Double> written) {
        for (int power = 2; power >= -4; power--) {
            for (double leading : LEADING) {
                double step = leading * Math.pow(10, power);
                if (fits(written, step)) {
                    return step;
                }
            }
        }
        return 0;
    }

    private static boolean fits(List<Double> written, double step) {
        long multiples = written.stream()
                .filter(w -> Math.abs(w / step - Math.rint(w / step)) < 1e-6 + 1e-9 / step)
                .count();
        boolean allTheSame = written.stream().distinct().count() == 1;
        return multiples >= SHARE * written.size() && (!allTheSame || step <= 1);
    }
}
