package soundings.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.history.DoseCourse;
import soundings.setup.Setup;

/** The additives that raise a parameter in a tank. */
final class Feeds {
    private Feeds() {}

    static boolean isDosed(Matter matter) {
        return ofCourses(matter).stream().anyMatch(Feed::isOn);
    }

    /** Those dosed now or before, the strongest first; then those of the setup that never were. */
    static List<Feed> all(Matter matter) {
        List<Feed> feeds = new ArrayList<>(ofCourses(matter));
        matter.history().setup().additives().stream()
                .filter(a -> a.parameter().equals(matter.parameter()))
                .filter(a -> feeds.stream().noneMatch(f -> f.row().isCalled(a.name())))
                .map(a -> new Feed(a, Optional.empty(), 0, Optional.empty(), 1, Optional.empty()))
                .forEach(feeds::add);
        return feeds;
    }

    private static List<Feed> ofCourses(Matter matter) {
        double litres = matter.tank().litres().orElse(1);
        return matter.tank().doses().stream()
                .flatMap(c -> ofCourse(matter, c))
                .sorted(Comparator.comparing(Feed::isOn)
                        .thenComparing(f -> f.risePerDay(litres))
                        .thenComparing(Feed::presentMlPerDay)
                        .reversed())
                .toList();
    }

    private static Stream<Feed> ofCourse(Matter matter, DoseCourse course) {
        Optional<DoseCourse.Step> step = course.findStep(matter.asOf());
        Optional<Setup.Pump> pump = pump(matter, course.name());
        return course.additive().stream()
                .filter(a -> a.parameter().equals(matter.parameter()))
                .map(a -> new Feed(
                        a, Optional.of(course), course.mlPerDayOn(matter.asOf()), step, delivered(pump), pump));
    }

    /** The pump that doses an additive into this tank, else the one that does into no tank by name. */
    static Optional<Setup.Pump> pump(Matter matter, String additive) {
        Setup setup = matter.history().setup();
        return setup.pumps().stream()
                .filter(p -> isSame(setup, p.additive(), additive))
                .filter(p -> p.tank().isBlank()
                        || isTank(setup, p.tank(), matter.tank().tank()))
                .min(Comparator.comparing(p -> p.tank().isBlank()));
    }

    private static boolean isSame(Setup setup, String pumped, String additive) {
        return Names.fold(pumped).equals(Names.fold(additive))
                || setup.additivesCalled(pumped).stream().anyMatch(a -> a.isCalled(additive));
    }

    private static boolean isTank(Setup setup, String written, String tank) {
        return Names.fold(written).equals(Names.fold(tank))
                || setup.findTank(written).map(t -> t.isCalled(tank)).orElse(false);
    }

    static double delivered(Optional<Setup.Pump> pump) {
        return pump.filter(p -> p.commandedMl().orElse(0) > 0 && p.measuredMl().orElse(0) > 0)
                .map(p -> p.measuredMl().orElse(1) / p.commandedMl().orElse(1))
                .orElse(1.0);
    }
}
