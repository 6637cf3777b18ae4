package soundings.layout;

import java.util.List;
import java.util.OptionalDouble;
import soundings.chemistry.Scale;
import soundings.log.Reading;
import soundings.quantity.Amount;

/**
 * Results that say "not detected": below the least the kit can show, never zero. That limit is the kit's first step from
 * the setup, else the least that was ever found under the same heading; where neither is known the result is not used.
 */
final class Undetected {
    private static final String NO_LIMIT =
            "not detected, and the least the kit can show is not known (sheet Kits of the setup)";

    private Undetected() {}

    /** @param found the results of the same series that hold a figure */
    static List<Reading> readings(Series series, Scale scale, OptionalDouble firstStep, List<Reading> found) {
        OptionalDouble limit = firstStep.isPresent() ? firstStep : least(series, found);
        return series.raws().stream()
                .filter(r -> r.amount().undetected())
                .map(r -> reading(r, scale, limit))
                .toList();
    }

    private static Reading reading(Raw raw, Scale scale, OptionalDouble limit) {
        boolean lost =
                limit.isPresent() && limit.getAsDouble() < raw.parameter().plausibleLow();
        String refused = limit.isEmpty() ? NO_LIMIT : lost ? "no living tank reads as low as this" : "";
        Amount below = new Amount.Below(limit.orElse(0));
        return raw.reading(below, scale, raw.refused().isEmpty() ? refused : raw.refused());
    }

    /** What is never absent from sea water is not below its own usual values when it is "not detected". */
    private static OptionalDouble least(Series series, List<Reading> found) {
        return series.parameter().plausibleLow() > 0
                ? OptionalDouble.empty()
                : found.stream()
                        .filter(r -> r.refused().isEmpty())
                        .mapToDouble(r -> low(r.amount()))
                        .filter(n -> n > 0)
                        .min();
    }

    /** A figure the kit could show; zero where the amount names none. */
    private static double low(Amount amount) {
        return amount.match(e -> e.value(), b -> b.limit(), a -> 0.0, b -> b.high());
    }
}
