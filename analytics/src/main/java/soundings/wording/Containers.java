package soundings.wording;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import soundings.chemistry.Alias;

/** Water counted in what it is carried in: {@code two buckets}, {@code 2 buckets of 15 L}, {@code 3 x 12 L bucket}, {@code 4 buckets (15 L each)}. */
public final class Containers {
    private static final Set<String> TIMES = Set.of("x", "times", "mal", "fois", "keer", "veces");
    private static final Set<String> OF = Set.of(
            "of", "with", "at", "@", "a", "zu", "mit", "von", "de", "van", "met", "con", "d", "'", "je", "each", "elk",
            "cada", "chacun", "-");
    private static final Set<String> CHANGED = Set.of(
            "changed",
            "exchanged",
            "replaced",
            "gewechselt",
            "getauscht",
            "changes",
            "cambiados",
            "ververst",
            "gewisseld");
    private static final Set<String> EACH = Set.of("each", "je", "chacun", "chaque", "elk", "per", "cada", "uno");
    private static final Set<String> IS =
            Set.of("=", ":", "is", "holds", "hat", "fasst", "ist", "contient", "fait", "bevat", "tiene");

    private Containers() {}

    /**
     * How much water, in litres or gallons where the size is told, else in buckets; {@code end} is one past the last token, {@code bucket} whether
     * a bucket is named.
     */
    record Count(double number, VolumeUnit unit, int end, boolean bucket) {}

    /** What one holds. */
    private record Size(double number, VolumeUnit unit, int end) {}

    static Optional<Count> at(Clauses text, int i) {
        OptionalDouble count = count(text, i);
        if (count.isEmpty()) {
            return Optional.empty();
        }
        double number = count.getAsDouble();
        if (text.in(i + 1, TIMES)) {
            return size(text, i + 2)
                    .map(s -> new Count(number * s.number(), s.unit(), behind(text, s.end()), bucket(text, s.end())));
        }
        if (!container(text, i + 1)) {
            return Optional.empty();
        }
        boolean bucket = bucket(text, i + 1);
        Optional<Count> told = told(text, i + 2).map(s -> new Count(number * s.number(), s.unit(), s.end(), bucket));
        return told.isPresent() || !bucket || sized(text, i + 2)
                ? told
                : Optional.of(new Count(number, VolumeUnit.BUCKET, i + 2, true));
    }

    /** What one bucket holds, where a text tells that and nothing else: {@code 1 bucket = 15 L}. */
    public static Optional<Bucket> bucket(String written, DecimalMark mark, Vocabulary vocabulary) {
        Clauses text = new Clauses(written, mark, vocabulary);
        int name = count(text, 0).orElse(0) == 1 ? 1 : text.pass(0, Set.of("a", "my", "our", "the"), 1);
        return bucket(text, name) && text.in(name + 1, IS)
                ? size(text, name + 2).filter(s -> text.stop(s.end())).map(s -> new Bucket(s.number(), s.unit()))
                : Optional.empty();
    }

    /** What one bucket holds. */
    public record Bucket(double number, VolumeUnit unit) {}

    private static OptionalDouble count(Clauses text, int i) {
        if (i >= text.size()) {
            return OptionalDouble.empty();
        }
        Optional<String> word = text.vocabulary
                .find(Alias.Kind.CHANGE, text.tokens.get(i).text())
                .filter(w -> w.length() == 1);
        return word.isPresent() ? OptionalDouble.of(Double.parseDouble(word.get())) : text.value(i);
    }

    private static boolean bucket(Clauses text, int i) {
        return text.volume(i).filter(v -> v == VolumeUnit.BUCKET).isPresent();
    }

    private static boolean container(Clauses text, int i) {
        return i < text.size()
                && text.vocabulary
                        .find(Alias.Kind.CHANGE, text.tokens.get(i).text())
                        .filter("container"::equals)
                        .isPresent();
    }

    private static Optional<Size> size(Clauses text, int i) {
        Optional<Clauses.Volume> unit = text.volumeWords(i + 1)
                .filter(v -> v.unit() != VolumeUnit.BUCKET
                        && v.unit() != VolumeUnit.PERCENT
                        && v.unit() != VolumeUnit.MILLILITRE);
        return text.value(i).isPresent()
                ? unit.map(v -> new Size(text.value(i).getAsDouble(), v.unit(), v.end()))
                : Optional.empty();
    }

    /** {@code of 15 L}, {@code (15 L each)}: one's size behind the word. In brackets it must say that it is one's. */
    private static Optional<Size> told(Clauses text, int from) {
        boolean changed = text.in(from, CHANGED) && text.is(from + 1, "(");
        int i = changed ? from + 1 : from;
        if (text.is(i, "(")) {
            return size(text, text.pass(i + 1, OF, 1))
                    .filter(s -> text.in(i + 1, EACH) || text.in(s.end(), EACH))
                    .map(s -> new Size(s.number(), s.unit(), text.pass(s.end(), EACH, 1)))
                    .filter(s -> text.is(s.end(), ")"))
                    .map(s -> new Size(s.number(), s.unit(), s.end() + 1));
        }
        int size = text.pass(i, OF, 2);
        return size == i
                ? Optional.empty()
                : size(text, size).map(s -> new Size(s.number(), s.unit(), text.pass(s.end(), EACH, 1)));
    }

    /** Whether some volume stands right behind, of which it is not said whether it is one's or that of all. */
    private static boolean sized(Clauses text, int i) {
        return size(text, text.pass(i, Set.of("("), 1)).isPresent();
    }

    private static int behind(Clauses text, int i) {
        return container(text, i) ? i + 1 : i;
    }
}
