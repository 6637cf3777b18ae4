package soundings.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import soundings.chemistry.Alias;

/** A text in tokens, with the questions the phrase rules ask of a place in it. */
final class Clauses {
    /** What one rule found: where it ends (token) and what it says. */
    record Found(int end, double sure, List<Said> said) {
        static Optional<Found> one(int end, double sure, Said said) {
            return Optional.of(new Found(end, sure, List.of(said)));
        }

        /** The same, a rate without a name being one of this additive. */
        Found about(String additive) {
            return new Found(
                    end,
                    sure,
                    said.stream()
                            .map(s -> s.match(t -> s, r -> r.named(additive), o -> o, c -> c, r -> r))
                            .toList());
        }
    }

    private static final Set<String> STOPS = Set.of(",", ";", ".", "|", "(", ")", "[", "]", "!", "•", "*", "\"");
    private static final Set<String> AND = Set.of("and", "&", "+", "und", "et", "y", "en", "then");

    final String plain;
    final String written;
    final List<Token> tokens;
    final DecimalMark mark;
    final Vocabulary vocabulary;

    Clauses(String text, DecimalMark mark, Vocabulary vocabulary) {
        this.written = text;
        this.plain = Plain.of(text);
        this.tokens = Tokens.of(plain);
        this.mark = mark;
        this.vocabulary = vocabulary;
    }

    private Clauses(Clauses whole, List<Token> tokens) {
        this.written = whole.written;
        this.plain = whole.plain;
        this.tokens = tokens;
        this.mark = whole.mark;
        this.vocabulary = whole.vocabulary;
    }

    /** The same text with the tokens {@code from} to {@code to} (one past the last) passed over. */
    Clauses without(int from, int to) {
        List<Token> rest = new ArrayList<>(tokens.subList(0, from));
        rest.addAll(tokens.subList(to, tokens.size()));
        return new Clauses(this, rest);
    }

    int size() {
        return tokens.size();
    }

    boolean is(int i, String text) {
        return i >= 0 && i < tokens.size() && tokens.get(i).is(text);
    }

    boolean in(int i, Set<String> texts) {
        return i >= 0 && i < tokens.size() && texts.contains(tokens.get(i).text());
    }

    boolean number(int i) {
        return i >= 0 && i < tokens.size() && tokens.get(i).number();
    }

    /** A clause ends before this token. */
    boolean stop(int i) {
        return i >= tokens.size() || tokens.get(i).kind() == Token.Kind.LINE_END || in(i, STOPS) || spacedSlash(i);
    }

    /** A slash with space on both sides parts two clauses; any other belongs to a unit or a date. */
    private boolean spacedSlash(int i) {
        Token token = tokens.get(i);
        boolean before = token.from() == 0 || plain.charAt(token.from() - 1) == ' ';
        return token.is("/") && before && (token.to() == plain.length() || plain.charAt(token.to()) == ' ');
    }

    boolean and(int i) {
        return in(i, AND);
    }

    /** A whole thought ends before this token. */
    boolean sentenceEnd(int i) {
        return i >= tokens.size()
                || tokens.get(i).kind() == Token.Kind.LINE_END
                || is(i, ";")
                || is(i, ".")
                || is(i, "|")
                || is(i, ")")
                || is(i, "(");
    }

    /** The first token at or behind {@code i} that is none of these words; at most {@code most} are passed. */
    int pass(int i, Set<String> words, int most) {
        int at = i;
        while (at < tokens.size()
                && at - i < most
                && words.contains(tokens.get(at).text())) {
            at++;
        }
        return at;
    }

    OptionalDouble value(int i) {
        return number(i) ? Numerals.with(tokens.get(i).text(), mark) : OptionalDouble.empty();
    }

    private Optional<Names.Match> named(int i, Function<String, Optional<String>> known) {
        return i < 0 ? Optional.empty() : Names.at(tokens, i, known);
    }

    Optional<Names.Match> test(int i) {
        return named(i, k -> vocabulary.find(Alias.Kind.PARAMETER, k));
    }

    Optional<Names.Match> additive(int i) {
        return named(i, vocabulary::findAdditive);
    }

    Optional<Names.Match> tank(int i) {
        return named(i, vocabulary::findTank);
    }

    /** The word of dosing, of one or more tokens, that begins here. */
    Optional<Names.Match> dosing(int i) {
        Optional<Names.Match> words = named(i, k -> vocabulary.find(Alias.Kind.DOSING, k));
        return words.isPresent() || !is(i, "@") ? words : Optional.of(new Names.Match(i, i + 1, "@", "to"));
    }

    /** Whether a word of dosing with this meaning begins here. */
    boolean dosing(int i, String means) {
        return dosing(i).filter(w -> w.means().equals(means)).isPresent();
    }

    Optional<VolumeUnit> volume(int i) {
        return i >= 0 && i < tokens.size() ? VolumeUnit.of(tokens.get(i).text()) : Optional.empty();
    }

    /** A volume unit of one or two words, such as {@code us gal}, and the token behind it. */
    Optional<Volume> volumeWords(int i) {
        Optional<Volume> two = i >= 0
                        && i + 1 < tokens.size()
                        && tokens.get(i).word()
                        && tokens.get(i + 1).word()
                ? VolumeUnit.of(tokens.get(i).text() + tokens.get(i + 1).text()).map(v -> new Volume(v, i + 2))
                : Optional.empty();
        return two.or(() -> volume(i).map(v -> new Volume(v, i + 1)));
    }

    record Volume(VolumeUnit unit, int end) {}

    String written(int from, int to) {
        return from >= to
                ? ""
                : written.substring(tokens.get(from).from(), tokens.get(to - 1).to());
    }

    /** The first token that begins at or behind a character. */
    int tokenAt(int character, int from) {
        int i = from;
        while (i < tokens.size() && tokens.get(i).from() < character) {
            i++;
        }
        return i;
    }
}
