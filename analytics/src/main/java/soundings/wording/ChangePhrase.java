package soundings.wording;

import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Alias;
import soundings.quantity.Amount;

/** {@code 10 % WC}, {@code water change 10%}, {@code changed 20 litres}, {@code 5 gal water change}, {@code 2 buckets}. */
final class ChangePhrase {
    private static final Set<String> LEAD = Set.of(
            "did",
            "done",
            "a",
            "an",
            "big",
            "small",
            "today",
            "weekly",
            "monthly",
            "another",
            "first",
            "second",
            "emergency",
            "performed",
            "and",
            "&",
            "-",
            "•",
            "then",
            "also",
            "the",
            "usual",
            "quick",
            "partial",
            "good",
            "+",
            "made",
            ":");
    private static final Set<String> BETWEEN = Set.of(
            ":", "=", "-", "of", "about", "was", "done", "today", "@", "at", "(", "del", "de", "von", "van", "um");
    private static final Set<String> TAIL = Set.of(
            "today",
            "done",
            "again",
            "of",
            "the",
            "tank",
            "water",
            "volume",
            "new",
            "salt",
            "changed",
            "this",
            "morning",
            "evening",
            "weekly",
            "total",
            "and",
            "with",
            "fresh",
            "saltwater",
            "mix",
            "swapped",
            "out");
    private static final Set<String> ENDS =
            Set.of("with", "using", "and", "then", "after", "before", "at", "&", "+", "while", "because", "plus");
    /** Between an amount and the water: {@code 10 % of the tank}, {@code 10 % d'eau}. */
    private static final Set<String> OF =
            Set.of("of", "the", "a", "tank", "d", "de", "l", "la", "'", "des", "vom", "van", "het", "del");

    private static final Set<String> TAKING = Set.of("siphoned", "drained", "took", "removed", "drew");

    private ChangePhrase() {}

    static Optional<Clauses.Found> at(Clauses text, int start) {
        int i = text.pass(start, LEAD, 5);
        return outAndIn(text, i)
                .or(() -> amountFirst(text, i))
                .or(() -> wordFirst(text, i))
                .or(() -> verbFirst(text, i));
    }

    /** {@code 24 litres out, 24 in}: as much put in as was taken out. */
    private static Optional<Clauses.Found> outAndIn(Clauses text, int start) {
        int i = text.pass(start, TAKING, 1);
        return measure(text, i)
                .filter(m -> m.unit() != VolumeUnit.UNWRITTEN && text.is(m.end(), "out"))
                .flatMap(out -> measure(text, text.pass(out.end() + 1, Set.of(",", "and", "&", ";", "/"), 2))
                        .filter(in -> in.amount().equals(out.amount()))
                        .filter(in -> in.unit() == out.unit() || in.unit() == VolumeUnit.UNWRITTEN)
                        .filter(in -> text.is(in.end(), "in") && text.stop(in.end() + 1))
                        .flatMap(in ->
                                Clauses.Found.one(in.end() + 1, 0.85, new Said.Change(out.amount(), out.unit()))));
    }

    static Optional<Names.Match> word(Clauses text, int i) {
        return Names.at(text.tokens, i, k -> text.vocabulary.find(Alias.Kind.CHANGE, k))
                .filter(w -> w.means().equals("water"));
    }

    private static boolean changed(Clauses text, int i) {
        return means(text, i, "changed");
    }

    private static boolean means(Clauses text, int i, String means) {
        return i >= 0
                && i < text.size()
                && text.vocabulary
                        .find(Alias.Kind.CHANGE, text.tokens.get(i).text())
                        .filter(means::equals)
                        .isPresent();
    }

    /** An amount and its unit, and the token behind. */
    private record Measure(Amount amount, VolumeUnit unit, int end, boolean bucket) {}

    private static Optional<Measure> measure(Clauses text, int i) {
        if (i >= text.size() || text.stop(i)) {
            return Optional.empty();
        }
        Optional<Measure> carried = Containers.at(text, i)
                .map(c -> new Measure(new Amount.Exact(c.number()), c.unit(), c.end(), c.bucket()));
        return carried.or(() -> AmountScan.inText(text.plain, text.tokens.get(i).from(), text.mark)
                .map(f -> {
                    int behind = text.tokenAt(f.end(), i);
                    Optional<Clauses.Volume> unit = text.volumeWords(behind);
                    return new Measure(
                            f.amount().amount(),
                            unit.map(Clauses.Volume::unit).orElse(VolumeUnit.UNWRITTEN),
                            unit.map(Clauses.Volume::end).orElse(behind),
                            unit.filter(u -> u.unit() == VolumeUnit.BUCKET).isPresent());
                }));
    }

    private static Optional<Clauses.Found> amountFirst(Clauses text, int i) {
        return measure(text, i).flatMap(m -> {
            int at = text.pass(m.end(), OF, 3);
            Optional<Names.Match> word = word(text, at);
            boolean changed = changed(text, at) || means(text, at, "noun") && changed(text, at + 1);
            if (word.isPresent() || changed) {
                int behind = means(text, at, "noun") ? at + 1 : at;
                return finish(text, word.map(Names.Match::to).orElse(changed(text, behind) ? behind + 1 : at), m, 0.95);
            }
            int end = means(text, at, "noun") ? at + 1 : m.end();
            return m.bucket() && text.stop(end) ? finish(text, end, m, 0.5) : Optional.empty();
        });
    }

    private static Optional<Clauses.Found> wordFirst(Clauses text, int i) {
        return word(text, i).flatMap(w -> {
            int percent = text.is(w.to(), "%") ? w.to() + 1 : w.to();
            Optional<Measure> measure = text.is(percent, ",")
                    ? measure(text, percent + 1).filter(m -> m.unit() != VolumeUnit.UNWRITTEN)
                    : measure(text, text.pass(percent, BETWEEN, 3));
            return measure.flatMap(m -> finish(text, m.end(), percentBefore(m, percent > w.to()), 0.95));
        });
    }

    /** {@code WC % 10}: the sign stands before. */
    private static Measure percentBefore(Measure measure, boolean percent) {
        boolean takes = percent && measure.unit() == VolumeUnit.UNWRITTEN;
        return takes ? new Measure(measure.amount(), VolumeUnit.PERCENT, measure.end(), false) : measure;
    }

    private static Optional<Clauses.Found> verbFirst(Clauses text, int i) {
        boolean verb = changed(text, i) || text.is(i, "swapped");
        return verb
                ? measure(text, i + 1)
                        .filter(m -> m.unit() != VolumeUnit.UNWRITTEN)
                        .flatMap(m -> finish(text, ofWater(text, m.end()), m, 0.9))
                : Optional.empty();
    }

    /** Passes {@code of water}, {@code de agua}. */
    private static int ofWater(Clauses text, int i) {
        int at = text.pass(i, OF, 3);
        return means(text, at, "noun") ? at + 1 : i;
    }

    /** Passes {@code (about 15 %)} and {@code = 15 %}: the same change told once more, in another measure. */
    private static int otherwise(Clauses text, int i) {
        if (text.is(i, "=")) {
            return measure(text, i + 1)
                    .filter(m -> m.unit() != VolumeUnit.UNWRITTEN && text.stop(m.end()))
                    .map(Measure::end)
                    .orElse(i);
        }
        if (!text.is(i, "(") && !text.is(i, "[")) {
            return i;
        }
        int from = text.pass(i + 1, Set.of("=", "or", "is"), 1);
        return measure(text, from)
                .filter(m -> m.unit() != VolumeUnit.UNWRITTEN && (text.is(m.end(), ")") || text.is(m.end(), "]")))
                .map(m -> m.end() + 1)
                .orElse(i);
    }

    private static Optional<Clauses.Found> finish(Clauses text, int end, Measure measure, double sure) {
        int last = text.pass(end, Set.of(")"), 1);
        last = text.pass(otherwise(text, last), TAIL, 6);
        boolean over = text.stop(last)
                || text.in(last, ENDS)
                || last > end && text.in(last - 1, ENDS)
                || text.test(last).isPresent();
        boolean amount = measure.unit() != VolumeUnit.MILLILITRE;
        double surely = measure.unit() == VolumeUnit.UNWRITTEN ? 0.5 : sure;
        return over && amount
                ? Clauses.Found.one(last, surely, new Said.Change(measure.amount(), measure.unit()))
                : Optional.empty();
    }
}
