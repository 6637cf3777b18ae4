package soundings.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A number format code taken apart (ISO/IEC 29500-1 §18.8.31): up to four sections between semicolons, each a row of tokens.
 * Quoted and escaped characters, colours, locales and padding never count as placeholders.
 */
public final class FormatCode {
    /** What one token is: characters to print, a date or time letter run, elapsed time such as {@code [h]}, a condition, a placeholder. */
    enum Kind {
        LITERAL,
        DATE_PART,
        ELAPSED,
        CONDITION,
        PLACEHOLDER,
        GENERAL
    }

    record Token(Kind kind, String text) {}

    private static final String DATE_LETTERS = "ymdhs";
    private static final String PLACEHOLDERS = "0#?.,%@/";

    private static final List<Token> WORDS = List.of(
            new Token(Kind.GENERAL, "General"),
            new Token(Kind.GENERAL, "Standard"),
            new Token(Kind.DATE_PART, "AM/PM"),
            new Token(Kind.DATE_PART, "A/P"));

    private final List<List<Token>> sections;

    private FormatCode(List<List<Token>> sections) {
        this.sections = sections;
    }

    public static FormatCode of(String code) {
        List<List<Token>> sections = new ArrayList<>();
        List<Token> tokens = new ArrayList<>();
        int at = 0;
        while (at < code.length()) {
            if (code.charAt(at) == ';') {
                sections.add(tokens);
                tokens = new ArrayList<>();
                at++;
            } else {
                at = token(code, at, tokens);
            }
        }
        sections.add(tokens);
        return new FormatCode(sections);
    }

    List<List<Token>> sections() {
        return sections;
    }

    /** What the format shows of a day number; empty where it shows a plain number (or elapsed time, see {@link #isElapsed}). */
    public Optional<Value.Shows> shows() {
        if (countsDigits(sections.get(0))) {
            return Optional.empty();
        }
        boolean date = false;
        boolean time = false;
        List<Token> parts = sections.get(0).stream()
                .filter(token -> token.kind() == Kind.DATE_PART || token.kind() == Kind.ELAPSED)
                .toList();
        for (int i = 0; i < parts.size(); i++) {
            boolean clock = isClock(parts, i);
            time |= clock;
            date |= !clock;
        }
        return shows(date, time);
    }

    /** Digits outside the fraction of a second: then letters such as those of {@code 0.0 dKH} are text nobody quoted. */
    private static boolean countsDigits(List<Token> tokens) {
        boolean afterSeconds = false;
        for (Token token : tokens) {
            if (token.kind() == Kind.DATE_PART || token.kind() == Kind.ELAPSED) {
                afterSeconds = letter(token) == 's';
            } else if (isDigit(token) && !afterSeconds) {
                return true;
            }
        }
        return false;
    }

    static boolean isDigit(Token token) {
        return token.kind() == Kind.PLACEHOLDER && "0#?".contains(token.text());
    }

    private static Optional<Value.Shows> shows(boolean date, boolean time) {
        if (date && time) {
            return Optional.of(Value.Shows.DATE_AND_TIME);
        }
        return date ? Optional.of(Value.Shows.DATE) : time ? Optional.of(Value.Shows.TIME) : Optional.empty();
    }

    /** Whether the format shows a span of time that may pass 24 hours, such as {@code [h]:mm}. */
    public boolean isElapsed() {
        return sections.get(0).stream().anyMatch(token -> token.kind() == Kind.ELAPSED);
    }

    /** {@code m} is minutes behind hours or before seconds, months anywhere else. */
    private static boolean isClock(List<Token> parts, int index) {
        char letter = letter(parts.get(index));
        if (letter != 'm') {
            return letter == 'h' || letter == 's' || letter == 'a';
        }
        boolean afterHours = index > 0 && letter(parts.get(index - 1)) == 'h';
        boolean beforeSeconds = index + 1 < parts.size() && letter(parts.get(index + 1)) == 's';
        boolean shortEnough = parts.get(index).text().length() <= 2;
        return parts.get(index).kind() == Kind.ELAPSED || (shortEnough && (afterHours || beforeSeconds));
    }

    private static char letter(Token token) {
        return token.text().toLowerCase(Locale.ROOT).charAt(0);
    }

    private static int token(String code, int at, List<Token> into) {
        char c = code.charAt(at);
        return switch (c) {
            case '"' -> quoted(code, at, into);
            case '\\', '!' -> literal(code, at + 1, at + 2, into);
            case '_' -> padding(code, at, into);
            case '*' -> Math.min(at + 2, code.length());
            case '[' -> bracket(code, at, into);
            default -> plain(code, at, into);
        };
    }

    private static int quoted(String code, int at, List<Token> into) {
        int close = code.indexOf('"', at + 1);
        return literal(code, at + 1, close < 0 ? code.length() : close, into) + 1;
    }

    private static int literal(String code, int from, int to, List<Token> into) {
        int end = Math.min(to, code.length());
        if (end > from) {
            into.add(new Token(Kind.LITERAL, code.substring(from, end)));
        }
        return end;
    }

    /** {@code _x} leaves the width of an x, shown here as one space. */
    private static int padding(String code, int at, List<Token> into) {
        into.add(new Token(Kind.LITERAL, " "));
        return Math.min(at + 2, code.length());
    }

    private static int bracket(String code, int at, List<Token> into) {
        int close = code.indexOf(']', at);
        if (close < 0) {
            return literal(code, at, code.length(), into);
        }
        String inside = code.substring(at + 1, close);
        if (inside.matches("(?i)h+|m+|s+")) {
            into.add(new Token(Kind.ELAPSED, inside));
        } else if (inside.matches("[<>=].*")) {
            into.add(new Token(Kind.CONDITION, inside));
        } else if (inside.startsWith("$")) {
            int dash = inside.indexOf('-');
            literal(inside, 1, dash < 0 ? inside.length() : dash, into);
        }
        return close + 1;
    }

    private static int plain(String code, int at, List<Token> into) {
        char c = Character.toLowerCase(code.charAt(at));
        for (Token word : WORDS) {
            if (code.regionMatches(true, at, word.text(), 0, word.text().length())) {
                into.add(word);
                return at + word.text().length();
            }
        }
        if (c == 'e' && at + 1 < code.length() && "+-".indexOf(code.charAt(at + 1)) >= 0) {
            into.add(new Token(Kind.PLACEHOLDER, "E"));
            return at + 2;
        }
        if (DATE_LETTERS.indexOf(c) >= 0) {
            return dateLetters(code, at, into);
        }
        Kind kind = PLACEHOLDERS.indexOf(c) >= 0 ? Kind.PLACEHOLDER : Kind.LITERAL;
        into.add(new Token(kind, code.substring(at, at + 1)));
        return at + 1;
    }

    private static int dateLetters(String code, int at, List<Token> into) {
        int end = at;
        while (end < code.length()
                && Character.toLowerCase(code.charAt(end)) == Character.toLowerCase(code.charAt(at))) {
            end++;
        }
        into.add(new Token(Kind.DATE_PART, code.substring(at, end)));
        return end;
    }
}
