package soundings.wording;

import java.util.OptionalDouble;

/** The figures of a number, read with either decimal mark. Plain text only, see {@link Plain}. */
final class Numerals {
    /** More figures than any number a keeper writes; longer runs are no numbers. */
    private static final int LONGEST = 24;

    private Numerals() {}

    /** One past the last character of the number that begins here; {@code at} itself when none does. */
    static int end(String plain, int at) {
        return end(plain, at, false);
    }

    /** @param spaced whether a space may set off three figures, as in {@code 1 350}; in running text it parts two numbers */
    static int end(String plain, int at, boolean spaced) {
        int i = at;
        if (mark(plain, i) && digitAt(plain, i + 1) && !digitAt(plain, i - 1)) {
            i++;
        }
        if (!digitAt(plain, i)) {
            return at;
        }
        while (i < plain.length()) {
            if (fraction(plain, i) > 0) {
                return i + 1;
            }
            if (digitAt(plain, i) || joins(plain, i) && (spaced || plain.charAt(i) != ' ')) {
                i++;
            } else {
                break;
            }
        }
        return i;
    }

    /** What a sign such as ½ adds to the figures before it; 0 where none stands. */
    private static double fraction(String plain, int i) {
        return switch (i < plain.length() ? plain.charAt(i) : ' ') {
            case '¼' -> 0.25;
            case '½' -> 0.5;
            case '¾' -> 0.75;
            default -> 0;
        };
    }

    /** A mark, apostrophe or space that belongs to the number: figures must follow, and three of them behind a space. */
    private static boolean joins(String plain, int i) {
        char c = plain.charAt(i);
        if (c == '.' || c == ',') {
            return digitAt(plain, i + 1) || mark(plain, i + 1) && digitAt(plain, i + 2) && c != ',';
        }
        return (c == ' ' || c == '\'') && groupBefore(plain, i) && groupAfter(plain, i + 1);
    }

    private static boolean groupBefore(String plain, int i) {
        int figures = 0;
        int at = i - 1;
        while (digitAt(plain, at) && figures < 4) {
            figures++;
            at--;
        }
        boolean whole = !mark(plain, at) && !letterAt(plain, at);
        return figures >= 1 && figures <= (plain.charAt(i) == ' ' ? 2 : 3) && whole && plain.charAt(at + 1) != '0';
    }

    private static boolean groupAfter(String plain, int i) {
        return digitAt(plain, i) && digitAt(plain, i + 1) && digitAt(plain, i + 2) && !digitAt(plain, i + 3);
    }

    private static boolean mark(String plain, int i) {
        return i >= 0 && i < plain.length() && (plain.charAt(i) == '.' || plain.charAt(i) == ',');
    }

    private static boolean digitAt(String plain, int i) {
        return i >= 0 && i < plain.length() && Tokens.digit(plain.charAt(i));
    }

    private static boolean letterAt(String plain, int i) {
        return i >= 0 && i < plain.length() && Tokens.letter(plain.charAt(i));
    }

    /** The value if the point is the decimal mark; empty where that cannot be. */
    static OptionalDouble withPoint(String figures) {
        return value(figures, '.', ',');
    }

    /** The value if the comma is the decimal mark; empty where that cannot be. */
    static OptionalDouble withComma(String figures) {
        return value(figures, ',', '.');
    }

    /** @param mark as settled; a text that only the other mark can explain is read with the other */
    static OptionalDouble with(String figures, DecimalMark mark) {
        OptionalDouble point = withPoint(figures);
        OptionalDouble comma = withComma(figures);
        boolean commaFirst = mark == DecimalMark.COMMA;
        OptionalDouble first = commaFirst ? comma : point;
        return first.isPresent() ? first : commaFirst ? point : comma;
    }

    private static OptionalDouble value(String figures, char decimal, char group) {
        if (figures.length() > LONGEST || figures.isEmpty()) {
            return OptionalDouble.empty();
        }
        double part = fraction(figures, figures.length() - 1);
        if (part > 0) {
            String whole = figures.substring(0, figures.length() - 1);
            return onlyFigures(whole)
                    ? OptionalDouble.of(Double.parseDouble("0" + whole) + part)
                    : OptionalDouble.empty();
        }
        int at = figures.indexOf(decimal);
        String whole = at < 0 ? figures : figures.substring(0, at);
        String fraction = at < 0 ? "" : figures.substring(at + 1);
        if (!onlyFigures(fraction) || at >= 0 && fraction.isEmpty() || !grouped(whole, group)) {
            return OptionalDouble.empty();
        }
        StringBuilder digits = new StringBuilder();
        whole.chars().filter(c -> c >= '0' && c <= '9').forEach(c -> digits.append((char) c));
        return OptionalDouble.of(Double.parseDouble("0" + digits + "." + fraction + "0"));
    }

    /** Whether every sign in the whole part sets off groups of three, all of them with one and the same sign. */
    private static boolean grouped(String whole, char group) {
        int first = 0;
        while (digitAt(whole, first)) {
            first++;
        }
        if (first == whole.length()) {
            return true;
        }
        char sign = whole.charAt(first);
        boolean allowed = sign == group || sign == ' ' || sign == '\'';
        boolean head = first >= 1 && first <= 3 && whole.charAt(0) != '0';
        return allowed && head && (whole.length() - first) % 4 == 0 && threes(whole, first, sign);
    }

    private static boolean threes(String whole, int first, char sign) {
        for (int i = first; i < whole.length(); i++) {
            boolean signDue = (i - first) % 4 == 0;
            if (signDue ? whole.charAt(i) != sign : !digitAt(whole, i)) {
                return false;
            }
        }
        return true;
    }

    private static boolean onlyFigures(String text) {
        return text.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
