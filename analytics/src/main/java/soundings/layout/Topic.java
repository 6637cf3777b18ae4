package soundings.layout;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.wording.Dates;
import soundings.wording.DatesInText;
import soundings.wording.WrittenDate;

/**
 * What a sheet's name and a table's titles say about all of it.
 *
 * @param subject a test, doses, water changes; unknown when nothing is said
 * @param month the month its day numbers belong to
 * @param banners the months that stand alone in lines between the rows, {@code June 2026}, by the line's row
 * @param year the year its dates without one belong to
 * @param day the day its rows belong to where they have none of their own
 * @param laboratory whether its results come from one
 */
record Topic(
        Label subject,
        Optional<YearMonth> month,
        Map<Integer, YearMonth> banners,
        OptionalInt year,
        Optional<WrittenDate> day,
        boolean laboratory,
        String name) {
    private static final Pattern PARTS = Pattern.compile("\\s+[-–—]\\s+|[:,(|)]");
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
                texts.stream().flatMap(t -> month(t, words).stream()).findFirst();
        OptionalInt year = year(texts, month, words);
        return new Topic(
                subject(texts, words),
                month,
                banners(table, year, words),
                year,
                day(table, texts, words),
                texts.stream().anyMatch(Topic::laboratory),
                String.join(" · ", table.titleTexts()));
    }

    /** The month that a text, or one of its parts, is: {@code Lagoon: August 2026}. */
    private static Optional<YearMonth> month(String text, Words words) {
        return words.month(text)
                .or(() -> PARTS.splitAsStream(text)
                        .flatMap(p -> words.month(p.strip()).stream())
                        .findFirst());
    }

    /** Whether numbers alone may be days of a month. */
    boolean daysCount() {
        return month.isPresent() || !banners.isEmpty();
    }

    /** A month without a year follows the one above it, or is of the year in the title. */
    private static Map<Integer, YearMonth> banners(Table table, OptionalInt titled, Words words) {
        Map<Integer, YearMonth> banners = new LinkedHashMap<>();
        Optional<YearMonth> last = Optional.empty();
        for (Line line : table.body()) {
            Optional<Integer> named =
                    line.cells().size() == 1 ? words.monthNamed(line.cells().get(0)) : Optional.empty();
            Optional<YearMonth> above = last;
            Optional<YearMonth> month = named.flatMap(n -> words.month(
                            line.cells().get(0).shown())
                    .or(() -> above.map(a -> YearMonth.of(a.getYear() + (n < a.getMonthValue() ? 1 : 0), n)))
                    .or(() -> titled.isPresent() ? Optional.of(YearMonth.of(titled.getAsInt(), n)) : Optional.empty()));
            month.ifPresent(m -> banners.put(line.row(), m));
            last = month.isPresent() ? month : last;
        }
        return banners;
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
        List<Line> said = table.titles().stream()
                .filter(l -> words.label(l.cells().get(0)).role().dates())
                .toList();
        List<WrittenDate> above = (said.isEmpty() ? table.titles() : said)
                .stream()
                        .flatMap(l -> l.cells().stream())
                        .flatMap(c -> words.day(c).stream())
                        .toList();
        List<WrittenDate> all =
                above.isEmpty() ? named(table.area().sheet()).stream().toList() : above;
        return all.stream().map(WrittenDate::days).distinct().count() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** The day that a sheet's name holds, or is; one that is nothing else may leave out the year. */
    private static Optional<WrittenDate> named(String sheet) {
        return DatesInText.only(sheet)
                .or(() -> Dates.month(sheet)
                                .filter(m ->
                                        m.year().isPresent() || !sheet.strip().matches("[0-9].*"))
                                .isPresent()
                        ? Optional.empty()
                        : Dates.read(sheet)
                                .filter(d -> d.sure() >= DatesInText.SURE
                                        && !d.readings().isEmpty()));
    }

    /** What is dosed may be named in another text than the one that says that something is. */
    private static Label subject(List<String> texts, Words words) {
        List<Label> all = subjects(texts, words);
        Label first = all.isEmpty() ? Label.UNKNOWN : all.get(0);
        return first.role() != Role.DOSE || !first.name().isEmpty()
                ? first
                : all.stream()
                        .filter(l -> l.role() == Role.DOSE && !l.name().isEmpty())
                        .findFirst()
                        .map(l -> l.withMlPerDay(first.mlPerDay()))
                        .orElse(first);
    }

    private static List<Label> subjects(List<String> texts, Words words) {
        return texts.stream()
                .flatMap(t -> Stream.of(words.label(t), t.strip().length() < 2 ? Label.UNKNOWN : words.inCompany(t)))
                .filter(l -> l.role() == Role.READING || l.role() == Role.DOSE || l.role() == Role.WATER_CHANGE)
                .toList();
    }

    private static OptionalInt year(List<String> texts, Optional<YearMonth> month, Words words) {
        return month.map(m -> OptionalInt.of(m.getYear()))
                .orElseGet(() ->
                        texts.stream().flatMapToInt(t -> words.year(t).stream()).findFirst());
    }

    Topic inYear(OptionalInt other) {
        return new Topic(subject, month, banners, other, day, laboratory, name);
    }

    boolean about(Role role) {
        return subject.role() == role;
    }
}
