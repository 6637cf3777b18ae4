package soundings.wording;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.chemistry.Alias;

/**
 * The unit of a test in a header, and the tokens it was found in.
 *
 * @param spelling as the reference resolves it, or as written where it does not; empty when no unit stands there
 * @param known whether the reference resolves it
 */
record HeaderUnit(String spelling, boolean known, int from, int to) {
    private static final HeaderUnit NONE = new HeaderUnit("", true, 0, 0);
    /** Names that are a unit at the same time. Not {@code kh}: a column so named may count anything. */
    private static final Set<String> BY_NAME = Set.of("dkh", "ppt", "psu", "sg");
    /** Elements that a compound may be counted as; they win over the compound's own name. */
    static final Set<String> ELEMENTS = Set.of("n", "p", "si");

    /** Element names that say what a nutrient without a unit is counted as. */
    private static final Set<String> COUNTED_AS = Set.of("n", "p", "nitrogen", "phosphorus", "phosphorous");

    static HeaderUnit of(HeaderParts parts, Names.Match name, String parameter, Vocabulary vocabulary) {
        Optional<HeaderUnit> steps = steps(parts);
        if (steps.isPresent()) {
            return steps.get();
        }
        Optional<HeaderUnit> written = longest(parts, name, parameter, vocabulary);
        if (written.isPresent()) {
            return basis(parts, written.get(), parameter, vocabulary);
        }
        String ofName = text(parts, name.from(), name.to());
        Optional<String> named = vocabulary
                .findUnit(ofName, parameter)
                .filter(u -> BY_NAME.contains(ofName) || otherBasis(vocabulary, parameter, u));
        return named.map(u -> new HeaderUnit(u, true, name.from(), name.to()))
                .or(() -> element(parts, name, parameter, vocabulary))
                .or(() -> bracketed(parts, name, vocabulary))
                .orElse(NONE);
    }

    static boolean otherBasis(Vocabulary vocabulary, String parameter, String unit) {
        return unit.contains("-")
                && vocabulary
                        .reference()
                        .findParameter(parameter)
                        .flatMap(p -> vocabulary.reference().findScale(p, unit).filter(s -> !s.id().equals(p.unit())))
                        .isPresent();
    }

    /** A kit's own steps are counted: {@code KH drops}, {@code Ca (ml titrant)}. A drop kit only has them. */
    private static Optional<HeaderUnit> steps(HeaderParts parts) {
        return IntStream.range(0, parts.tokens.size())
                .filter(i -> Amounts.step(parts.tokens.get(i).text()))
                .filter(i -> parts.derived.isEmpty() && !parts.tokens.get(i).is("drop"))
                .mapToObj(i -> new HeaderUnit(parts.tokens.get(i).text(), false, volume(parts, i), i + 1))
                .findFirst();
    }

    private static int volume(HeaderParts parts, int step) {
        boolean volume =
                step > 0 && VolumeUnit.of(parts.tokens.get(step - 1).text()).isPresent();
        return volume ? step - 1 : step;
    }

    /** The element a test is counted as where no unit stands: {@code NO3 as N}, {@code Phosphorus}. A lone {@code P} may count either. */
    private static Optional<HeaderUnit> element(
            HeaderParts parts, Names.Match name, String parameter, Vocabulary vocabulary) {
        return IntStream.range(0, name.key().length() == 1 ? 0 : parts.tokens.size())
                .filter(i -> COUNTED_AS.contains(parts.tokens.get(i).text()))
                .mapToObj(i -> vocabulary
                        .findUnit("mg/l " + parts.tokens.get(i).text(), parameter)
                        .map(u -> new HeaderUnit(u, true, i, i + 1)))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<HeaderUnit> longest(
            HeaderParts parts, Names.Match name, String parameter, Vocabulary vocabulary) {
        int size = parts.tokens.size();
        Stream<HeaderUnit> found = IntStream.range(0, size)
                .boxed()
                .flatMap(from -> IntStream.rangeClosed(from + 1, Math.min(size, from + 9))
                        .mapToObj(to -> candidate(parts, from, to, parameter, vocabulary))
                        .flatMap(Optional::stream));
        return found.filter(u -> !(u.from >= name.from() && u.to <= name.to()))
                .filter(u -> !substanceOnly(parts, u, vocabulary))
                .max(Comparator.comparing((HeaderUnit u) -> !meets(u, name)).thenComparing(u -> length(parts, u)));
    }

    /** Whether words of the test's name are taken into the unit, as in {@code PO4 ppb}, where the basis may stand behind. */
    private static boolean meets(HeaderUnit unit, Names.Match name) {
        return unit.from < name.to() && name.from() < unit.to;
    }

    private static int length(HeaderParts parts, HeaderUnit unit) {
        return Vocabulary.squeezed(text(parts, unit.from, unit.to)).length();
    }

    private static Optional<HeaderUnit> candidate(
            HeaderParts parts, int from, int to, String parameter, Vocabulary vocabulary) {
        String text = text(parts, from, to);
        return vocabulary.findUnit(text, parameter).map(u -> new HeaderUnit(u, true, from, to));
    }

    /** A unit such as {@code no3} or {@code caco3}, which names what is counted but not in what. */
    private static boolean substanceOnly(HeaderParts parts, HeaderUnit unit, Vocabulary vocabulary) {
        String key = Vocabulary.key(text(parts, unit.from, unit.to));
        boolean name = vocabulary.find(Alias.Kind.PARAMETER, key).isPresent() && key.length() > 1;
        return name && !BY_NAME.contains(key) && key.indexOf('°') < 0 && !key.equals("ph")
                || ELEMENTS.contains(key)
                || key.equals("caco3");
    }

    /** Joins the unit with a basis that stands elsewhere in the header: {@code Nitrate-N ... mg/L} is {@code mg/l n}. */
    private static HeaderUnit basis(HeaderParts parts, HeaderUnit unit, String parameter, Vocabulary vocabulary) {
        Optional<String> joined = Optional.empty();
        boolean element = false;
        for (int i = 0; i < parts.tokens.size(); i++) {
            Token token = parts.tokens.get(i);
            if (token.word() && !(i >= unit.from && i < unit.to) && !element) {
                Optional<String> with = vocabulary
                        .findUnit(Plain.of(unit.spelling) + " " + token.text(), parameter)
                        .filter(u -> !vocabulary.sameScale(parameter, u, unit.spelling));
                element = with.isPresent() && ELEMENTS.contains(token.text());
                joined = with.isPresent() ? with : joined;
            }
        }
        return joined.map(u -> new HeaderUnit(u, true, unit.from, unit.to)).orElse(unit);
    }

    /** What stands in brackets behind the name and is no name itself: a unit the reference does not know. */
    private static Optional<HeaderUnit> bracketed(HeaderParts parts, Names.Match name, Vocabulary vocabulary) {
        List<Token> tokens = parts.tokens;
        for (int i = name.to(); i < tokens.size(); i++) {
            if (tokens.get(i).is("[") || tokens.get(i).is("(")) {
                int to = close(tokens, i);
                String text = text(parts, i + 1, to);
                boolean unit = text.contains("/") || vocabulary.knowsUnit(text);
                return unit ? Optional.of(new HeaderUnit(text, false, i + 1, to)) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static int close(List<Token> tokens, int open) {
        int i = open + 1;
        while (i < tokens.size() && !tokens.get(i).is("]") && !tokens.get(i).is(")")) {
            i++;
        }
        return i;
    }

    private static String text(HeaderParts parts, int from, int to) {
        return from >= to || from >= parts.tokens.size()
                ? ""
                : parts.plain.substring(
                        parts.tokens.get(from).from(), parts.tokens.get(to - 1).to());
    }
}
