package soundings.layout;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a sheet's name and a table's titles say about all of it.
 *
 * @param subject a test, doses, water changes; unknown when nothing is said
 * @param month the month its day numbers belong to
 * @param year the year its dates without one belong to
 */
record Topic(Label subject, Optional<YearMonth> month, OptionalInt year, String name) {
    /** The nearest words count most: the last title, the first, the sheet's name. */
    static Topic of(Table table, Words words) {
        List<String> texts = new ArrayList<>(table.titleTexts());
        java.util.Collections.reverse(texts);
        texts.add(table.area().sheet());
        Optional<YearMonth> month =
                texts.stream().flatMap(t -> words.month(t).stream()).findFirst();
        return new Topic(
                subject(texts, words), month, year(texts, month, words), String.join(" · ", table.titleTexts()));
    }

    private static Label subject(List<String> texts, Words words) {
        return texts.stream()
                .map(words::label)
                .filter(l -> l.role() == Role.READING || l.role() == Role.DOSE || l.role() == Role.WATER_CHANGE)
                .findFirst()
                .orElse(Label.UNKNOWN);
    }

    private static OptionalInt year(List<String> texts, Optional<YearMonth> month, Words words) {
        return month.map(m -> OptionalInt.of(m.getYear()))
                .orElseGet(() ->
                        texts.stream().flatMapToInt(t -> words.year(t).stream()).findFirst());
    }

    boolean about(Role role) {
        return subject.role() == role;
    }
}
