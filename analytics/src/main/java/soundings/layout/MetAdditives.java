package soundings.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import soundings.chemistry.Names;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.DecimalMark;
import soundings.wording.Named;
import soundings.wording.Phrase;
import soundings.wording.Phrases;

/** The additives' names that stand in headings, in columns of additives and beside amounts in running text. */
final class MetAdditives {
    private final Words words;
    private final DecimalMark mark;
    private final Map<String, String> names = new LinkedHashMap<>();

    private MetAdditives(Words words, DecimalMark mark) {
        this.words = words;
        this.mark = mark;
    }

    static List<Named> in(List<Shape> shapes, Words words, DecimalMark mark) {
        MetAdditives met = new MetAdditives(words, mark);
        shapes.stream().filter(Shape::dated).forEach(met::headings);
        shapes.stream().filter(Shape::dated).forEach(met::notes);
        return met.names.values().stream().map(n -> new Named(n, List.of())).toList();
    }

    private void headings(Shape shape) {
        shape.all(Role.DOSE).forEach(f -> add(f.label().name()));
        shape.all(Role.ADDITIVE).stream()
                .flatMap(f -> shape.column(f).cells().stream())
                .forEach(c -> add(words.additiveName(c.shown().strip())));
    }

    private void notes(Shape shape) {
        shape.fields().stream()
                .filter(f -> f.role() == Role.NOTE || f.role() == Role.DOSE || f.role() == Role.WATER_CHANGE)
                .flatMap(f -> shape.column(f).cells().stream())
                .filter(MetAdditives::maySay)
                .map(Cell::shown)
                .forEach(this::text);
        shape.fields().stream()
                .flatMap(f -> shape.column(f).cells().stream())
                .map(Cell::comment)
                .filter(MetAdditives::maySay)
                .forEach(this::text);
    }

    private void text(String text) {
        Phrases.read(text, mark, words.running()).forEach(p -> name(p).ifPresent(this::add));
    }

    /** An amount put in is written with its unit. */
    private static boolean maySay(Cell cell) {
        return cell.value() instanceof Value.Text text && maySay(text.text());
    }

    private static boolean maySay(String text) {
        return text.indexOf(' ') > 0 && text.toLowerCase(Locale.ROOT).contains("ml");
    }

    private static Optional<String> name(Phrase phrase) {
        return phrase.said()
                .match(
                        t -> Optional.empty(),
                        r -> Optional.of(r.additive()),
                        o -> Optional.of(o.additive()),
                        c -> Optional.empty(),
                        r -> Optional.empty());
    }

    private void add(String name) {
        if (name.chars().filter(Character::isLetter).count() >= 2 && name.length() <= 40) {
            names.putIfAbsent(Names.fold(name), name);
        }
    }
}
