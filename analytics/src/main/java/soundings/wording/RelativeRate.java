package soundings.wording;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** {@code doubled alk}, {@code alk dose halved}: a rate told in times of the one before; no other words, no numbers. */
final class RelativeRate {
    private static final Map<String, Double> TIMES =
            Map.of("doubled", 2.0, "double", 2.0, "halved", 0.5, "halve", 0.5, "tripled", 3.0);
    private static final Set<String> FILL =
            Set.of("dose", "dosing", "doses", "the", "of", "rate", "today", "now", "again", "pump", "-", "and", "&");

    private RelativeRate() {}

    static Optional<Clauses.Found> at(Clauses text, int start) {
        OptionalDouble times = OptionalDouble.empty();
        Optional<String> name = Optional.empty();
        int i = start;
        while (!text.stop(i)) {
            Double here = TIMES.get(text.tokens.get(i).text());
            Optional<Names.Match> known = text.additive(i);
            Optional<Names.Match> named = known.isPresent() ? known : text.test(i);
            if (here != null && times.isEmpty()) {
                times = OptionalDouble.of(here);
                i++;
            } else if (text.in(i, FILL)) {
                i++;
            } else if (named.isPresent() && name.isEmpty()) {
                int from = i;
                i = named.get().to();
                name = Optional.of(known.map(Names.Match::means).orElse(text.written(from, i)));
            } else {
                return Optional.empty();
            }
        }
        OptionalDouble factor = times;
        int end = i;
        return name.filter(n -> factor.isPresent())
                .map(n -> new Clauses.Found(
                        end, 0.8, List.of(new Said.Rate(n, factor.orElse(1), Optional.empty(), Said.Rate.Told.TIMES))));
    }
}
