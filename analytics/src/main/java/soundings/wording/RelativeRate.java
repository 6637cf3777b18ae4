package soundings.wording;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A rate told by the one before: {@code doubled alk}, {@code alk dose halved}, {@code raised alk by 5 ml/day}, {@code alk 5 ml a day
 * less}, {@code restarted alk}. No words beside these, one name, at most one volume.
 */
final class RelativeRate {
    private static final Map<String, Double> TIMES = Map.of(
            "doubled",
            2.0,
            "double",
            2.0,
            "halved",
            0.5,
            "halve",
            0.5,
            "tripled",
            3.0,
            "restarted",
            1.0,
            "resumed",
            1.0,
            "restart",
            1.0,
            "resume",
            1.0);
    private static final Set<String> FILL =
            Set.of("dose", "dosing", "doses", "the", "of", "rate", "today", "now", "again", "pump", "-", "and", "&");
    private static final Set<String> UP =
            Set.of("raised", "raise", "increased", "increase", "upped", "up", "more", "erhoht", "augmente", "verhoogd");
    private static final Set<String> DOWN = Set.of(
            "lowered",
            "lower",
            "reduced",
            "reduce",
            "decreased",
            "decrease",
            "cut",
            "down",
            "less",
            "gesenkt",
            "reduziert",
            "reduit",
            "verlaagd");
    private static final Set<String> BY = Set.of("by", "um", "met");
    private static final Set<String> BEHIND = Set.of("more", "less");

    private final Clauses text;
    private int at;
    private OptionalDouble times = OptionalDouble.empty();
    private int sign;
    private boolean by;
    private OptionalDouble step = OptionalDouble.empty();
    private Optional<String> name = Optional.empty();

    private RelativeRate(Clauses text, int start) {
        this.text = text;
        this.at = start;
    }

    static Optional<Clauses.Found> at(Clauses text, int start) {
        RelativeRate rate = new RelativeRate(text, start);
        while (!text.stop(rate.at)) {
            if (!rate.word()) {
                return Optional.empty();
            }
        }
        return rate.said().map(s -> new Clauses.Found(rate.at, 0.8, List.of(s)));
    }

    /** Passes one word, name or volume; false where it is none of a rate told so, or one too many. */
    private boolean word() {
        Double factor = TIMES.get(text.tokens.get(at).text());
        if (factor != null && times.isEmpty()) {
            times = OptionalDouble.of(factor);
            at++;
            return true;
        }
        return onAgain() || direction() || fill() || volume() || named();
    }

    /** {@code back on}, {@code on again}: as it was. */
    private boolean onAgain() {
        boolean on = text.is(at, "back") && text.is(at + 1, "on") || text.is(at, "on") && text.is(at + 1, "again");
        if (!on || times.isPresent()) {
            return false;
        }
        times = OptionalDouble.of(1);
        at += 2;
        return true;
    }

    private boolean direction() {
        boolean up = text.in(at, UP);
        if (!up && !text.in(at, DOWN) || sign != 0) {
            return false;
        }
        sign = up ? 1 : -1;
        by |= text.in(at, BEHIND) && step.isPresent() || text.in(at, RateWords.TURNS) && text.number(at + 1);
        at++;
        return true;
    }

    private boolean fill() {
        boolean before = text.in(at, BY) && text.number(at + 1);
        by |= before;
        boolean passes = before || text.in(at, FILL);
        at += passes ? 1 : 0;
        return passes;
    }

    private boolean volume() {
        Optional<VolumeUnit> unit = text.volume(at + 1).filter(v -> v == VolumeUnit.MILLILITRE);
        if (unit.isEmpty() || step.isPresent() || text.value(at).isEmpty()) {
            return false;
        }
        Optional<Rate.Period> often = RatePhrase.often(text, at + 2);
        step = OptionalDouble.of(
                text.value(at).getAsDouble() * often.map(Rate.Period::perDay).orElse(1.0));
        at = often.map(Rate.Period::end).orElse(at + 2);
        return true;
    }

    private boolean named() {
        Optional<Names.Match> known = text.additive(at);
        Optional<Names.Match> named = known.isPresent() ? known : text.test(at);
        if (named.isEmpty() || name.isPresent()) {
            return false;
        }
        int from = at;
        at = named.get().to();
        name = Optional.of(known.map(Names.Match::means).orElse(text.written(from, at)));
        return true;
    }

    private Optional<Said> said() {
        boolean multiplied = times.isPresent() && sign == 0 && step.isEmpty() && !by;
        boolean added = times.isEmpty() && sign != 0 && step.isPresent() && by;
        return name.filter(n -> multiplied || added)
                .map(n -> new Said.Rate(
                        n,
                        multiplied ? times.orElse(1) : sign * step.orElse(0),
                        Optional.empty(),
                        multiplied ? Said.Rate.Told.TIMES : Said.Rate.Told.STEP,
                        0));
    }
}
