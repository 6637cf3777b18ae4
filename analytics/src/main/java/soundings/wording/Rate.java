package soundings.wording;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A unit of dosing: a volume and how often.
 *
 * @param mlPerDay millilitres a day that one of this unit is
 * @param volume what is counted
 * @param end index of the first token behind it
 */
record Rate(double mlPerDay, VolumeUnit volume, int end) {
    private static final Set<String> PER = Set.of(
            "/", "per", "a", "an", "pro", "par", "je", "each", "every", "por", "al", "am", "jeden", "jede", "chaque",
            "elke", "elk", "cada");
    private static final Map<String, Double> PERIODS = Map.ofEntries(
            Map.entry("day", 1.0),
            Map.entry("days", 1.0),
            Map.entry("d", 1.0),
            Map.entry("tag", 1.0),
            Map.entry("jour", 1.0),
            Map.entry("dia", 1.0),
            Map.entry("dag", 1.0),
            Map.entry("j", 1.0),
            Map.entry("giorno", 1.0),
            Map.entry("daily", 1.0),
            Map.entry("taglich", 1.0),
            Map.entry("dagelijks", 1.0),
            Map.entry("daags", 1.0),
            Map.entry("diario", 1.0),
            Map.entry("quotidien", 1.0),
            Map.entry("hour", 24.0),
            Map.entry("hr", 24.0),
            Map.entry("h", 24.0),
            Map.entry("hourly", 24.0),
            Map.entry("stunde", 24.0),
            Map.entry("std", 24.0),
            Map.entry("heure", 24.0),
            Map.entry("uur", 24.0),
            Map.entry("hora", 24.0),
            Map.entry("semaine", 1.0 / 7),
            Map.entry("semana", 1.0 / 7),
            Map.entry("week", 1.0 / 7),
            Map.entry("wk", 1.0 / 7),
            Map.entry("woche", 1.0 / 7),
            Map.entry("weekly", 1.0 / 7));
    private static final Set<String> ADVERBS =
            Set.of("daily", "hourly", "weekly", "taglich", "dagelijks", "daags", "diario", "quotidien");

    /** The rate that begins at this token: {@code ml/day}, {@code mL per day}, {@code ml daily}, {@code l/d}. */
    static Optional<Rate> at(List<Token> tokens, int i) {
        Optional<VolumeUnit> volume =
                i < tokens.size() ? VolumeUnit.of(tokens.get(i).text()) : Optional.empty();
        return volume.filter(v -> v.litres().isPresent())
                .flatMap(v ->
                        period(tokens, i + 1).map(p -> new Rate(v.litres().orElse(0) * 1000 * p.perDay(), v, p.end())));
    }

    /** How often something happens in a day, and the token behind. */
    record Period(double perDay, int end) {}

    /** {@code /day}, {@code per day}, {@code a day}, {@code daily}, {@code /24 h}. */
    static Optional<Period> period(List<Token> tokens, int i) {
        if (i >= tokens.size()) {
            return Optional.empty();
        }
        if (ADVERBS.contains(tokens.get(i).text())) {
            return Optional.of(new Period(PERIODS.getOrDefault(tokens.get(i).text(), 1.0), i + 1));
        }
        boolean per = PER.contains(tokens.get(i).text());
        if (!per || i + 1 >= tokens.size()) {
            return Optional.empty();
        }
        Token next = tokens.get(i + 1);
        if (next.is("24")
                && i + 2 < tokens.size()
                && PERIODS.getOrDefault(tokens.get(i + 2).text(), 0.0) == 24) {
            return Optional.of(new Period(1, i + 3));
        }
        return Optional.ofNullable(PERIODS.get(next.text())).map(p -> new Period(p, i + 2));
    }
}
