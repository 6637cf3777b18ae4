package soundings.wording;

import java.util.ArrayList;
import java.util.List;

/** Cuts plain text into words, numbers and signs in one pass; digits inside a word ({@code po4}) belong to the word. */
final class Tokens {
    private Tokens() {}

    static List<Token> of(String plain) {
        List<Token> tokens = new ArrayList<>();
        int at = 0;
        while (at < plain.length()) {
            char c = plain.charAt(at);
            if (c == '\n' || c == '\r') {
                tokens.add(new Token(Token.Kind.LINE_END, at, at + 1, "\n"));
                at++;
            } else if (c <= ' ' || Character.isISOControl(c)) {
                at++;
            } else {
                Token token = token(plain, at);
                tokens.add(token);
                at = token.to();
            }
        }
        return tokens;
    }

    private static Token token(String plain, int at) {
        int number = Numerals.end(plain, at);
        if (number > at) {
            return new Token(Token.Kind.NUMBER, at, number, plain.substring(at, number));
        }
        if (!letter(plain.charAt(at))) {
            return new Token(Token.Kind.SIGN, at, at + 1, plain.substring(at, at + 1));
        }
        int end = wordEnd(plain, at);
        return new Token(Token.Kind.WORD, at, end, plain.substring(at, end));
    }

    private static int wordEnd(String plain, int at) {
        if (plain.charAt(at) == 'x' && at + 1 < plain.length() && digit(plain.charAt(at + 1))) {
            return at + 1;
        }
        int end = at + 1;
        while (end < plain.length() && (letter(plain.charAt(end)) || digit(plain.charAt(end)))) {
            end++;
        }
        return end;
    }

    static boolean letter(char c) {
        return c >= 'a' && c <= 'z' || c >= 0x80 && (Character.isLetter(c) || Character.isSurrogate(c));
    }

    static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
