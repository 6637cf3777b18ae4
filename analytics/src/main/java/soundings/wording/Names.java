package soundings.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Finds known names in a row of tokens, the longest first, none overlapping. */
final class Names {
    /** A name found: tokens {@code from} to {@code to} (one past the last), and what it means. */
    record Match(int from, int to, String key, String means) {
        boolean covers(int token) {
            return token >= from && token < to;
        }
    }

    private Names() {}

    static List<Match> all(List<Token> tokens, Function<String, Optional<String>> known) {
        List<Match> matches = new ArrayList<>();
        int i = 0;
        while (i < tokens.size()) {
            Optional<Match> match = at(tokens, i, known);
            match.ifPresent(matches::add);
            i = match.map(Match::to).orElse(i + 1);
        }
        return matches;
    }

    /** The longest known name that begins at this token. */
    static Optional<Match> at(List<Token> tokens, int i, Function<String, Optional<String>> known) {
        Optional<Match> longest = Optional.empty();
        StringBuilder key = new StringBuilder();
        int words = 0;
        for (int j = i; j < tokens.size() && words < Vocabulary.MOST_WORDS; j++) {
            Token token = tokens.get(j);
            if (token.word() || token.number() && words > 0) {
                key.append(words++ == 0 ? "" : " ").append(token.text());
                int end = j + 1;
                String found = key.toString();
                Optional<Match> match = known.apply(found).map(m -> new Match(i, end, found, m));
                longest = match.isPresent() ? match : longest;
            } else if (words == 0 || !joins(token)) {
                break;
            }
        }
        return longest;
    }

    /** Signs that may stand inside a name: {@code carb. hardness}, {@code no3-n}, {@code nh3/nh4}, {@code ca2+}. */
    private static boolean joins(Token sign) {
        return sign.is(".") || sign.is("-") || sign.is("_") || sign.is("'") || sign.is("/") || sign.is("+");
    }
}
