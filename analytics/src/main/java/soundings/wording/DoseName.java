package soundings.wording;

import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Alias;

/**
 * The name of what is dosed, as it stands in a sentence: a known additive's, a test's, or one with a word such as {@code solution}
 * in it, {@code soda ash solution}, {@code Ca-Lösung}.
 *
 * @param from first token, {@code to} one past the last
 * @param text the keeper's own name for it where known, else as written
 * @param known whether every word of it is known
 * @param test whether it is the bare name of a test, which may speak of a result as well
 * @param nutrient whether it is the name of one that may double or halve within days
 */
record DoseName(int from, int to, String text, boolean known, boolean test, boolean nutrient) {
    private static final int LONGEST = 5;
    private static final Set<String> NUTRIENTS = Set.of("nitrate", "nitrite", "phosphate", "ammonia", "silicate");
    static final Set<String> ENDINGS = Set.of("losung", "oplossing", "mischung");

    /** The name that begins here. */
    static Optional<DoseName> at(Clauses text, int start) {
        int to = start;
        boolean said = false;
        boolean known = true;
        while (to < start + LONGEST && part(text, to)) {
            Optional<Names.Match> name = named(text, to);
            boolean noun = noun(text, to);
            said |= name.isPresent() || noun;
            known &= name.isPresent() || noun || joint(text, to);
            to = name.map(Names.Match::to).orElse(to + 1);
        }
        int end = text.is(to, ".") && text.number(to + 1) ? to + 1 : to;
        int last = text.is(to - 1, "-") ? to - 1 : to;
        return said && !strange(text, start, to) ? Optional.of(of(text, start, last, end, known)) : Optional.empty();
    }

    private static DoseName of(Clauses text, int from, int to, int end, boolean known) {
        Optional<Names.Match> additive = text.additive(from).filter(m -> m.to() == to);
        Optional<Names.Match> test = text.test(from).filter(m -> m.to() == to);
        return new DoseName(
                from,
                end,
                additive.map(Names.Match::means).orElse(text.written(from, to)),
                known || additive.isPresent() || DoseSubject.soda(text.written(from, to), text.vocabulary),
                test.isPresent(),
                test.filter(m -> NUTRIENTS.contains(m.means())).isPresent());
    }

    /** An additive's or a test's name, where no word of dosing that begins here is longer. */
    private static Optional<Names.Match> named(Clauses text, int i) {
        int words = text.dosing(i).map(Names.Match::to).orElse(i);
        return text.additive(i).or(() -> text.test(i)).filter(m -> m.to() > words || words == i);
    }

    private static boolean part(Clauses text, int i) {
        if (text.stop(i) || text.and(i)) {
            return false;
        }
        boolean free = text.dosing(i).isEmpty() || text.dosing(i, "name");
        return named(text, i).isPresent()
                || RatePhrase.often(text, i).isEmpty()
                        && RatePhrase.start(text, i).isEmpty()
                        && text.tokens.get(i).word()
                        && free
                        && text.volume(i).isEmpty()
                || joint(text, i);
    }

    /** A hyphen inside a word. */
    private static boolean joint(Clauses text, int i) {
        return text.is(i, "-")
                && i > 0
                && i + 1 < text.size()
                && text.tokens.get(i - 1).to() == text.tokens.get(i).from()
                && text.tokens.get(i + 1).from() == text.tokens.get(i).to()
                && text.tokens.get(i + 1).word();
    }

    private static boolean noun(Clauses text, int i) {
        String word = i < text.size() ? text.tokens.get(i).text() : "";
        return text.dosing(i, "name")
                || text.vocabulary
                        .find(Alias.Kind.DOSE, word)
                        .filter("solution"::equals)
                        .isPresent()
                || ENDINGS.stream().anyMatch(e -> word.endsWith(e) && word.length() > e.length() + 1);
    }

    /** Words of another's water, of a plan, of what is no additive. */
    private static boolean strange(Clauses text, int from, int to) {
        boolean strange = DosePhrase.otherThing(text, from, to);
        for (int i = from; i < to; i++) {
            boolean word = named(text, i).isEmpty() && !noun(text, i) && !joint(text, i);
            strange |= word
                    && (Hedges.ahead(text, i)
                            || text.in(i, DosePhrase.NOT_A_NAME)
                            || TestPhrase.saysTest(text.tokens.get(i).text()));
        }
        return strange;
    }
}
