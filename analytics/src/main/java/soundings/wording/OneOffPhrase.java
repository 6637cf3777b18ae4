package soundings.wording;

import java.util.Optional;
import java.util.Set;

/** {@code +20 ml alk}, {@code added 20 ml of cal by hand}, {@code alk 20 ml by hand}: a volume put in once. */
final class OneOffPhrase {
    static final Set<String> VERBS = Set.of(
            "added",
            "add",
            "dosed",
            "gave",
            "extra",
            "manual",
            "manually",
            "one",
            "off",
            "oneoff",
            "single",
            "dose",
            "boost",
            "+",
            "plus",
            "another",
            "corrected",
            "correction",
            "also",
            "and",
            "then",
            "hand",
            "by",
            "an",
            "a",
            "of",
            "-",
            "&",
            ":",
            "today",
            "in",
            "put",
            "poured");
    private static final Set<String> DOING = Set.of(
            "added",
            "dosed",
            "gave",
            "extra",
            "manual",
            "manually",
            "oneoff",
            "single",
            "boost",
            "+",
            "plus",
            "corrected",
            "hand",
            "poured",
            "off",
            "another");
    static final Set<String> TAIL = Set.of(
            "by",
            "hand",
            "manually",
            "manual",
            "extra",
            "today",
            "now",
            "once",
            "one",
            "off",
            "-",
            "boost",
            "correction",
            "dose",
            "again",
            "morning",
            "evening",
            "this");
    private static final Set<String> NO_NAME =
            Set.of("to", "in", "into", "with", "from", "per", "a", "each", "every", "x", "more", "less");

    private OneOffPhrase() {}

    static Optional<Clauses.Found> at(Clauses text, int start) {
        int i = text.pass(start, VERBS, 5);
        boolean doing = false;
        for (int k = start; k < i; k++) {
            doing |= text.in(k, DOING);
        }
        boolean done = doing;
        return volumeFirst(text, i, done).or(() -> nameFirst(text, i, done));
    }

    private static Optional<Clauses.Found> volumeFirst(Clauses text, int i, boolean doing) {
        Optional<Double> ml = ml(text, i);
        if (ml.isEmpty()) {
            return Optional.empty();
        }
        int at = text.is(i + 2, "of") ? i + 3 : i + 2;
        Optional<Names.Match> known = text.additive(at).or(() -> text.test(at));
        int nameEnd = known.map(Names.Match::to).orElseGet(() -> unknownEnd(text, at));
        boolean millilitres =
                text.volume(i + 1).filter(v -> v == VolumeUnit.MILLILITRE).isPresent();
        if (nameEnd == at || known.isEmpty() && (!doing || !millilitres || DosePhrase.otherThing(text, at, nameEnd))) {
            return Optional.empty();
        }
        return finish(text, name(text, at, nameEnd), ml.get(), nameEnd, doing, known.isPresent());
    }

    private static int unknownEnd(Clauses text, int at) {
        int to = at;
        while (to < at + 4
                && to < text.size()
                && (text.tokens.get(to).word() || text.is(to, "-"))
                && !TAIL.contains(text.tokens.get(to).text())
                && !NO_NAME.contains(text.tokens.get(to).text())) {
            to++;
        }
        return to;
    }

    private static Optional<Clauses.Found> nameFirst(Clauses text, int i, boolean doing) {
        Optional<Names.Match> known = text.additive(i).or(() -> text.test(i));
        if (known.isEmpty()) {
            return Optional.empty();
        }
        int at = text.pass(known.get().to(), Set.of("+", "dose", "dosed", "added", ":", "extra", "boost", "plus"), 3);
        boolean more = doing || text.in(at - 1, DOING);
        return ml(text, at).flatMap(ml -> finish(text, name(text, i, known.get().to()), ml, at + 2, more, true));
    }

    private static String name(Clauses text, int from, int to) {
        return text.additive(from).map(Names.Match::means).orElse(text.written(from, to));
    }

    private static Optional<Double> ml(Clauses text, int i) {
        Optional<VolumeUnit> unit = text.volume(i + 1).filter(v -> v == VolumeUnit.MILLILITRE || v == VolumeUnit.LITRE);
        return unit.isPresent() && text.value(i).isPresent()
                ? Optional.of(text.value(i).getAsDouble() * unit.get().litres().orElse(0) * 1000)
                : Optional.empty();
    }

    private static Optional<Clauses.Found> finish(
            Clauses text, String additive, double ml, int end, boolean doing, boolean known) {
        int last = text.pass(end, TAIL, 5);
        boolean byHand = last > end
                && (text.is(last - 1, "hand")
                        || text.is(last - 1, "manually")
                        || text.is(end, "by")
                        || text.is(end, "manually")
                        || text.is(end, "extra"));
        if (!text.stop(last) && !text.and(last)
                || !doing && !byHand
                || Rate.period(text.tokens, last).isPresent()) {
            return Optional.empty();
        }
        return Clauses.Found.one(last, known ? 0.9 : 0.7, new Said.OneOff(additive, ml));
    }
}
