package soundings.layout;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.wording.DatesInText;
import soundings.wording.WrittenDate;

/**
 * What a sheet's name and a table's titles say about all of it.
 *
 * @param subject a test, doses, water changes; unknown when nothing is said
 * @param month the month its day numbers belong to
 * @param year the year its dates without one belong to
 * @param day the day its rows belong to where they have none of their own
 * @param laboratory whether its results come from one
 */
record Topic(
        Label subject,
        Optional<YearMonth> month,
        OptionalInt year,
        Optional<WrittenDate> day,
        boolean laboratory,
        String name) {
    private static final Set<String> LABORATORY = Set.of(
            "lab", "labs", "laboratory", "laboratories", "labor", "laborwerte", "laboratoire", "laboratorio", "icp");
    /** Titles of tables that hold no water of a tank. */
    private static final Set<String> OTHER_WATER = Set.of(
            "mix",
            "salt",
            "fresh",
            "tap",
            "ro",
            "rodi",
            "source",
            "standard",
            "reference",
            "recipe",
            "target",
            "targets",
            "goal",
            "typical",
            "natural",
            "nsw",
            "price",
            "order",
            "shopping",
            "salz",
            "ziel",
            "sel");

    /** The nearest words count most: the last title, the first, the sheet's name. */
    static Topic of(Table table, Words words) {
        List<String> texts = new ArrayList<>(table.titleTexts());
        java.util.Collections.reverse(texts);
        texts.add(table.area().sheet());
        Optional<YearMonth> month =
                texts.stream().flatMap(t -> words.month(t).stream()).findFirst();
        return new Topic(
                subject(texts, words),
                month,
                year(texts, month, words),
                day(table, texts, words),
                texts.stream().anyMatch(Topic::laboratory),
                String.join(" · ", table.titleTexts()));
    }

    static boolean laboratory(String word) {
        return says(word, LABORATORY);
    }

    private static boolean says(String text, Set<String> words) {
        return Stream.of(Names.fold(text).split("[^\\p{L}]+")).anyMatch(words::contains);
    }

    /** The one day that stands above the table or in the sheet's name. */
    private static Optional<WrittenDate> day(Table table, List<String> texts, Words words) {
        if (texts.stream().anyMatch(t -> says(t, OTHER_WATER))) {
            return Optional.empty();
        }
        List<WrittenDate> above = table.titles().stream()
                .flatMap(l -> l.cells().stream())
                .flatMap(c -> words.day(c).stream())
                .toList();
        List<WrittenDate> all = above.isEmpty()
                ? DatesInText.only(table.area().sheet()).stream().toList()
                : above;
        return all.stream().map(WrittenDate::days).distinct().count() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    private static Label subject(List<String> texts, Words words) {
        return texts.stream()
                .flatMap(t -> Stream.of(words.label(t), t.strip().length() < 2 ? Label.UNKNOWN : words.inCompany(t)))
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
