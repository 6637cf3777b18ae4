package soundings.setup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.chemistry.TargetRange;

/**
 * Ranges that a mentor wrote into earlier reports, beside the keeper's own. The keeper's own range wins; a mentor's comes before the
 * usual one; of two from mentors the later holds.
 */
public final class MentorRanges {
    private MentorRanges() {}

    /** @param written oldest first */
    public static List<MentorRange> of(List<WrittenRange> written, Setup setup, Reference reference) {
        List<MentorRange> all = new ArrayList<>();
        Map<String, Integer> last = new HashMap<>();
        for (WrittenRange range : written) {
            MentorRange now = one(range, setup, reference);
            if (now.used()) {
                now.target()
                        .map(t -> last.put(
                                Names.fold(t.tank()) + "|" + t.parameter().id(), all.size()))
                        .ifPresent(before -> all.set(before, replaced(all.get(before))));
            }
            all.add(now);
        }
        return List.copyOf(all);
    }

    /** The setup with the ranges in use behind the keeper's own. */
    public static Setup with(Setup setup, List<MentorRange> ranges) {
        List<Setup.Target> targets = Stream.concat(
                        setup.targets().stream(),
                        ranges.stream().filter(MentorRange::used).flatMap(r -> r.target().stream()))
                .toList();
        return setup.withTargets(targets);
    }

    private static MentorRange replaced(MentorRange range) {
        return new MentorRange(range.written(), range.target(), false, "a later one holds");
    }

    private static MentorRange one(WrittenRange range, Setup setup, Reference reference) {
        Optional<Parameter> parameter = SetupReading.findParameter(reference, range.test());
        if (parameter.isEmpty()) {
            return refused(range, "no test is called '" + range.test() + "'");
        }
        Optional<Scale> scale = range.unit().isBlank()
                ? Optional.of(reference.canonicalScale(parameter.get()))
                : reference.findScale(parameter.get(), range.unit());
        return scale.map(s -> read(range, s, setup, reference))
                .orElseGet(() -> refused(
                        range,
                        "'" + range.unit() + "' is no unit of "
                                + parameter.get().name()));
    }

    private static MentorRange read(WrittenRange range, Scale scale, Setup setup, Reference reference) {
        String tank = tank(range, setup);
        Optional<TargetRange> before = inForce(tank, scale.parameter(), setup, reference);
        OptionalDouble low = bound(range.low(), scale, before.map(TargetRange::low));
        OptionalDouble high = bound(range.high(), scale, before.map(TargetRange::high));
        if (low.isEmpty() || high.isEmpty()) {
            return refused(range, "no number that could be " + scale.parameter().name() + " in " + scale.label());
        }
        if (low.getAsDouble() > high.getAsDouble()) {
            return refused(range, "the low end is above the high end");
        }
        Setup.Target target = new Setup.Target(
                tank, scale.parameter(), low.getAsDouble(), high.getAsDouble(), range.place(), whose(range));
        return judged(range, target, setup);
    }

    private static MentorRange judged(WrittenRange range, Setup.Target target, Setup setup) {
        Optional<Setup.Target> own = setup.findTarget(target.tank(), target.parameter());
        if (own.isEmpty()) {
            return new MentorRange(range, Optional.of(target), true, "tests are judged by it");
        }
        boolean same = own.get().low() == target.low() && own.get().high() == target.high();
        return new MentorRange(
                range,
                Optional.of(target),
                false,
                same
                        ? "the setup workbook says the same"
                        : "the setup workbook's own range is used: " + own.get().cell());
    }

    /** A bound left blank stays as it is; one that cannot be read, or that no tank has, is none. */
    private static OptionalDouble bound(String text, Scale scale, Optional<Double> before) {
        if (text.isBlank()) {
            return before.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        }
        Parameter parameter = scale.parameter();
        OptionalDouble number = WrittenNumber.parse(text, ' ')
                .filter(w -> w.unit().isEmpty())
                .map(w -> w.resolved(n -> plausible(parameter, scale.canonical(n))))
                .orElse(OptionalDouble.empty());
        return number.stream()
                .map(scale::canonical)
                .filter(n -> plausible(parameter, n))
                .findFirst();
    }

    private static boolean plausible(Parameter parameter, double canonical) {
        boolean none = parameter.balances() && canonical == 0;
        return none || (canonical >= parameter.plausibleLow() && canonical <= parameter.plausibleHigh());
    }

    private static Optional<TargetRange> inForce(String tank, Parameter parameter, Setup setup, Reference reference) {
        return setup.findTarget(tank, parameter)
                .map(t -> new TargetRange(parameter, t.low(), t.high(), "setup"))
                .or(() -> reference.findTarget(parameter));
    }

    /** Reports call the one tank of a log that names none "The tank". */
    private static String tank(WrittenRange range, Setup setup) {
        String written = Names.fold(range.tank()).equals("the tank") ? "" : range.tank();
        return setup.findTank(written).map(Setup.Tank::name).orElse(written);
    }

    private static String whose(WrittenRange range) {
        String who = range.by().isBlank() ? "somebody unnamed" : range.by();
        return who + range.on().map(day -> ", " + day).orElse("") + " (" + range.place() + ")";
    }

    private static MentorRange refused(WrittenRange range, String because) {
        return new MentorRange(range, Optional.empty(), false, "not used: " + because);
    }
}
