package soundings.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.wording.WrittenAmount;

/** Which scale the results of one series are written in when the heading's unit is missing or in doubt. */
final class Scales {
    /** The best scale must fit this many times better than the next. */
    private static final double CLEAR = 1.8;

    /** No test tells apart what differs by less than this part of its usual error; common practice, no source. */
    private static final double FINER = 20;

    private final Reference reference;
    private final Typical typical;
    private final Parameter parameter;

    Scales(Reference reference, Parameter parameter) {
        this.reference = reference;
        this.parameter = parameter;
        this.typical = Typical.of(parameter, reference);
    }

    /** @param scale empty when none or more than one fits */
    record Choice(Optional<Scale> scale, String candidates) {}

    private record Scored(Scale scale, double fit) {}

    /** The one usual scale on which the values are plausible, and clearly more so than on any other; nothing but zeros is none on any. */
    Choice byValue(List<Raw> values) {
        Scale own = reference.canonicalScale(parameter);
        boolean nothing = values.stream().allMatch(v -> v.amount().amount().about() == 0);
        if (nothing && usual().stream().allMatch(s -> s.canonical(0) == 0)) {
            return new Choice(Optional.of(own), own.label());
        }
        List<Scored> scored = usual().stream()
                .map(s -> new Scored(s, fit(s, values)))
                .filter(s -> s.fit() > 0.02)
                .sorted(Comparator.comparingDouble(Scored::fit).reversed())
                .toList();
        List<Scored> told =
                scored.stream().filter(s -> !tooFine(s.scale(), values)).toList();
        scored = told.isEmpty() ? scored : told;
        String names = scored.stream().map(s -> s.scale().label()).collect(Collectors.joining(", "));
        if (scored.isEmpty()) {
            return new Choice(Optional.empty(), "none of the usual ones");
        }
        boolean clear = scored.size() == 1
                || scored.get(0).fit() > CLEAR * scored.get(1).fit();
        return new Choice(clear ? Optional.of(scored.get(0).scale()) : Optional.empty(), names);
    }

    /** Whether figures were told apart by far less than a test can show: 0.1 and 0.2 µg/L of ammonia were meant otherwise. */
    private boolean tooFine(Scale scale, List<Raw> values) {
        double[] figures = values.stream()
                .mapToDouble(v -> v.amount().amount().about())
                .filter(Double::isFinite)
                .distinct()
                .sorted()
                .toArray();
        double finest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < figures.length; i++) {
            finest = Math.min(finest, Math.abs(scale.canonical(figures[i]) - scale.canonical(figures[i - 1])));
        }
        double step = finest;
        return reference
                .findConstant("kit_error." + parameter.id())
                .filter(error -> step < error.value() / FINER)
                .isPresent();
    }

    List<Scale> usual() {
        return reference.scales(parameter).stream().filter(Scale::usual).toList();
    }

    private double fit(Scale scale, List<Raw> values) {
        List<Double> canonical = new ArrayList<>();
        values.forEach(v -> canonical.add(scale.canonical(v.amount().amount().about())));
        double implausible =
                canonical.stream().filter(c -> !typical.plausible(c)).count() / (double) canonical.size();
        double mean = canonical.stream().mapToDouble(typical::fit).average().orElse(0);
        return implausible > 0.3 ? 0 : mean;
    }

    /** Scales that can be told from this one by value: a factor of two for what is held steady, of ten for what is not. */
    List<Scale> rivals(Scale scale) {
        boolean steady = parameter.kind() == Parameter.Kind.ION || parameter.kind() == Parameter.Kind.CONDITION;
        double apart = Math.log(steady ? 2 : 9);
        return usual().stream().filter(s -> ratio(s, scale) >= apart).toList();
    }

    /** How differently two scales read the same figure, as the logarithm of the ratio. */
    private double ratio(Scale one, Scale other) {
        double figure = other.written(typical.mid());
        double read = one.canonical(figure);
        return read <= 0 || !Double.isFinite(read) ? 10 : Math.abs(Math.log(read / typical.mid()));
    }

    Typical typical() {
        return typical;
    }

    /** A figure and the scale it was read on. */
    record OnScale(Scale scale, double canonical) {}

    /** An amount on the scale of its own unit, else on each usual one where it lies within some spreads of the middle. */
    List<OnScale> read(WrittenAmount amount, double spreads) {
        double figure = amount.amount().about();
        Optional<Scale> own =
                Optional.of(amount.unit()).filter(u -> !u.isEmpty()).flatMap(u -> reference.findScale(parameter, u));
        return own.map(s -> List.of(new OnScale(s, s.canonical(figure))))
                .orElseGet(() -> usual().stream()
                        .map(s -> new OnScale(s, s.canonical(figure)))
                        .filter(o -> Double.isFinite(o.canonical())
                                && typical.plausible(o.canonical())
                                && typical.distance(o.canonical()) < spreads * typical.spread())
                        .toList());
    }
}
