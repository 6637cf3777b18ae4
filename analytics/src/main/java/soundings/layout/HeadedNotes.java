package soundings.layout;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import soundings.chemistry.Names;
import soundings.log.Inferred;
import soundings.sheet.Cell;
import soundings.wording.DecimalMark;
import soundings.wording.Phrase;
import soundings.wording.Phrases;
import soundings.wording.Vocabulary;
import soundings.wording.VolumeText;

/** A diary with a column a tank: running text with results under two headings or more that are names and nothing known. */
final class HeadedNotes {
    private static final String BECAUSE = "columns of notes with results stand under different names";
    private static final int FEWEST = 2;
    private static final double SHARE = 0.3;
    private static final int LOOKED_AT = 60;

    private HeadedNotes() {}

    static Shape settle(Shape shape, Words words) {
        if (shape.has(Role.TANK) || !shape.dated()) {
            return shape;
        }
        TankTitles titles = new TankTitles(words);
        Set<Integer> named = shape.all(Role.NOTE).stream()
                .filter(f -> f.label().tank().isEmpty() && names(f, titles, words))
                .filter(f -> tells(shape.column(f).cells(), words.running()))
                .map(Field::column)
                .collect(Collectors.toSet());
        return named.size() < FEWEST
                ? shape
                : shape.replace(
                        f -> named.contains(f.column()),
                        f -> f.guessed(f.label().withTank(name(f)), Set.of(Inferred.TANK), BECAUSE));
    }

    private static String name(Field field) {
        return VolumeText.without(field.header())
                .replaceAll("[\\s()\\[\\],:-]+$", "")
                .strip();
    }

    private static boolean names(Field field, TankTitles titles, Words words) {
        String name = name(field);
        return !name.isEmpty()
                && !words.label(name).known()
                && titles.nameLike(name)
                && !titles.general(name)
                && !words.filler(name)
                && !RepeatedNames.tellsWhen(Names.fold(name));
    }

    private static boolean tells(List<Cell> cells, Vocabulary vocabulary) {
        long telling = cells.stream()
                .limit(LOOKED_AT)
                .filter(c -> Phrases.read(c.shown(), DecimalMark.POINT, vocabulary).stream()
                        .anyMatch(HeadedNotes::result))
                .count();
        return telling >= FEWEST && telling >= SHARE * Math.min(LOOKED_AT, cells.size());
    }

    private static boolean result(Phrase phrase) {
        return phrase.said().match(t -> true, r -> false, o -> false, c -> false, r -> false);
    }
}
