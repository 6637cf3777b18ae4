package soundings.notebook;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.chemistry.TargetRange;
import soundings.quantity.Interval;

/** A level and its range again in the unit the keeper writes, where the report uses another. */
final class OwnUnit {
    /** Nearer than this share, two units are told apart by nobody: parts per million and milligrams per litre. */
    private static final double SAME = 0.05;

    private OwnUnit() {}

    /** {@code In meq/L, as you write it: the level is 2.24 (2.20 to 2.28), the range 2.7 to 3.1.} Empty where there is no need. */
    static Optional<String> sentence(View view, String tank, Parameter parameter) {
        List<View.Test> tests = view.tests().stream()
                .filter(t -> t.tankName().equals(tank) && t.parameter().equals(parameter))
                .toList();
        return tests.stream()
                .findFirst()
                .flatMap(OwnUnit::scale)
                .flatMap(scale -> view.estimate(tank, parameter)
                        .map(e -> e.level())
                        .filter(level -> differs(scale, level))
                        .map(level -> sentence(scale, level, view.target(tank, parameter))));
    }

    /** The way most of a test's readings were written. */
    private static Optional<Scale> scale(View.Test test) {
        Map<String, List<Scale>> written = test.series().used().stream()
                .map(p -> p.reading().scale())
                .collect(Collectors.groupingBy(Scale::id, LinkedHashMap::new, Collectors.toList()));
        return written.values().stream()
                .max(Comparator.comparingInt(List::size))
                .map(scales -> scales.get(0))
                .filter(s -> !s.id().equals(test.parameter().unit()));
    }

    private static boolean differs(Scale scale, Interval level) {
        return Math.abs(scale.written(level.mid()) - level.mid()) > SAME * Math.abs(level.mid());
    }

    /** As many digits as the report's own unit shows: more where the figures are smaller, fewer where they are larger. */
    private static int decimals(Scale scale, Interval level) {
        double ratio = level.mid() / scale.written(level.mid());
        int shift = ratio > 0 && Double.isFinite(ratio) ? (int) Math.round(Math.log10(ratio)) : 0;
        return Math.max(0, scale.parameter().decimals() + shift);
    }

    private static String sentence(Scale scale, Interval level, Optional<TargetRange> target) {
        Interval own =
                new Interval(scale.written(level.mid()), scale.written(level.low()), scale.written(level.high()));
        int decimals = Figures.decimals(own, decimals(scale, level));
        return "In " + scale.label() + ", as you write it: the level is " + Figures.interval(own, decimals)
                + target.map(t -> ", the range " + Figures.number(scale.written(t.low()), decimals) + " to "
                                + Figures.number(scale.written(t.high()), decimals))
                        .orElse("")
                + ".";
    }
}
