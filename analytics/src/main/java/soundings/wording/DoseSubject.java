package soundings.wording;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import soundings.chemistry.Alias;
import soundings.chemistry.Reference;
import soundings.chemistry.Salt;

/**
 * What an additive's name tells of what it raises: {@code KH solution}, {@code alk} and {@code soda ash solution} all raise alkalinity.
 *
 * @param parameter the id of the one test in the name; empty where none or several stand there
 * @param general whether the name tells nothing else, so that it may stand for whatever raises this
 */
public record DoseSubject(String parameter, boolean general) {
    /** Stands for every additive. */
    public static final String ANY = "";

    private static final Set<String> ENDS =
            Set.of("pump", "list", "half", "double", "triple", "stop", "none", "on", "same");
    private static final Set<String> TURNS = Set.of("up", "down", "more", "less", "off");

    /** What comes along in a salt of something else: calcium chloride is dosed for its calcium. */
    private static final Set<String> BESIDE = Set.of("chloride", "sulfate", "sodium");

    private static final DoseSubject NONE = new DoseSubject("", false);
    private static final Set<String> OF = Set.of("of", "de", "del", "d", "du", "von", "van");
    private static final Set<String> SODA = Set.of("Na", "C", "H", "O");

    public static DoseSubject of(String name, Vocabulary vocabulary) {
        List<Token> words = words(name);
        List<Names.Match> tests = Names.all(words, k -> vocabulary.find(Alias.Kind.PARAMETER, k));
        Set<String> parameters = tests.stream().map(Names.Match::means).collect(Collectors.toSet());
        if (parameters.size() > 1) {
            parameters.removeAll(BESIDE);
        }
        if (parameters.isEmpty()) {
            return soda(words, vocabulary.reference()) ? new DoseSubject("alkalinity", false) : NONE;
        }
        boolean general = tests.stream().noneMatch(m -> BESIDE.contains(m.means()) && !parameters.contains(m.means()));
        for (int i = 0; i < words.size(); i++) {
            int at = i;
            general &= tests.stream().anyMatch(m -> m.covers(at)) || noun(words.get(i), vocabulary);
        }
        return parameters.size() == 1 ? new DoseSubject(parameters.iterator().next(), general) : NONE;
    }

    /** The test's own words in a name that tells nothing else: {@code KH} of {@code KH solution}. */
    public static Optional<String> test(String name, Vocabulary vocabulary) {
        List<Token> words = words(name);
        List<Names.Match> tests = Names.all(words, k -> vocabulary.find(Alias.Kind.PARAMETER, k));
        return tests.size() == 1 && of(name, vocabulary).general()
                ? Optional.of(name.substring(
                        words.get(tests.get(0).from()).from(),
                        words.get(tests.get(0).to() - 1).to()))
                : Optional.empty();
    }

    /** One word for what is raised: the test's id, or the name itself. */
    public static String key(String name, Vocabulary vocabulary) {
        String parameter = of(name, vocabulary).parameter();
        return parameter.isEmpty() ? Vocabulary.key(name) : parameter;
    }

    /** What a text that was not understood may have said a dose of; {@link #ANY} where it names none. */
    public static Set<String> perhapsIn(String text, DecimalMark mark, Vocabulary vocabulary) {
        Clauses clauses = new Clauses(text, mark, vocabulary);
        Set<String> named = new HashSet<>();
        boolean dose = false;
        boolean turns = false;
        for (int i = 0; i < clauses.size(); i++) {
            String word = clauses.dosing(i).map(Names.Match::means).orElse("");
            boolean ml = clauses.number(i - 1)
                    && clauses.volume(i).filter(v -> v == VolumeUnit.MILLILITRE).isPresent();
            dose |= ml || ENDS.contains(word) || RatePhrase.often(clauses, i).isPresent();
            turns |= TURNS.contains(word);
            int at = i;
            clauses.additive(i)
                    .or(() -> clauses.test(at))
                    .ifPresent(n -> named.add(key(clauses.written(n.from(), n.to()), vocabulary)));
        }
        boolean some = dose || turns && !named.isEmpty();
        return !some ? Set.of() : named.isEmpty() ? Set.of(ANY) : named;
    }

    /** {@code calciumoplossing}: the word that it begins with. */
    private static Token stem(Token token) {
        return DoseName.ENDINGS.stream()
                .filter(e ->
                        token.word() && token.text().endsWith(e) && token.text().length() > e.length())
                .map(e -> new Token(
                        token.kind(),
                        token.from(),
                        token.to() - e.length(),
                        token.text().substring(0, token.text().length() - e.length())))
                .findFirst()
                .orElse(token);
    }

    private static boolean noun(Token token, Vocabulary vocabulary) {
        return DoseName.ENDINGS.contains(token.text())
                || OF.contains(token.text())
                || vocabulary
                        .find(Alias.Kind.DOSE, token.text())
                        .filter("solution"::equals)
                        .isPresent()
                || vocabulary
                        .find(Alias.Kind.DOSING, token.text())
                        .filter(m -> m.equals("name") || m.equals("pump") || m.equals("fill"))
                        .isPresent();
    }

    /** Whether the words name a salt of sodium that raises alkalinity, and no test. */
    static boolean soda(String name, Vocabulary vocabulary) {
        DoseSubject subject = of(name, vocabulary);
        return !subject.general()
                && subject.parameter().equals("alkalinity")
                && soda(words(name), vocabulary.reference());
    }

    private static List<Token> words(String name) {
        return Tokens.of(Plain.of(name)).stream()
                .map(DoseSubject::stem)
                .filter(t -> t.word() || t.number())
                .toList();
    }

    /** Salts of sodium that bring alkalinity and nothing else that is tested. */
    private static boolean soda(List<Token> words, Reference reference) {
        String all = " " + words.stream().map(Token::text).collect(Collectors.joining(" ")) + " ";
        return reference.substances().salts().stream()
                .filter(s -> s.equivalents() > 0)
                .filter(s -> SODA.containsAll(elements(s)))
                .anyMatch(s -> s.names().stream().anyMatch(n -> all.contains(" " + Plain.of(n) + " ")));
    }

    private static Set<String> elements(Salt salt) {
        return salt.formula().atoms().entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }
}
