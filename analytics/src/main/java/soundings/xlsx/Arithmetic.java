package soundings.xlsx;

import java.util.Map;
import java.util.Optional;

/**
 * A working's formula turned into a spreadsheet's: numbers, names of earlier lines, {@code + - * / ^} and brackets, nothing else. What
 * does not parse as that, or does not give the stated value, stays a number without a formula.
 */
final class Arithmetic {
    private final String source;
    private final Map<String, Named> names;
    private int at;

    private Arithmetic(String source, Map<String, Named> names) {
        this.source = source;
        this.names = names;
    }

    /** A number with a cell it stands in. */
    record Named(String cell, double value) {}

    /** A spreadsheet formula, without its equals sign, and what it comes to. */
    record Formula(String text, double value) {}

    /** The formula where it is one over the given names. */
    static Optional<Formula> of(String source, Map<String, Named> names) {
        try {
            Arithmetic reading = new Arithmetic(plain(source), names);
            Formula all = reading.sum();
            return reading.peek() == 0 && Double.isFinite(all.value()) ? Optional.of(all) : Optional.empty();
        } catch (NotArithmetic other) {
            return Optional.empty();
        }
    }

    private static String plain(String source) {
        return source.replace('\u00d7', '*')
                .replace('\u00b7', '*')
                .replace('\u00f7', '/')
                .replace('\u2212', '-')
                .strip();
    }

    /** The formula that gives {@code value} to within the last few bits of a double. */
    static Optional<Formula> of(String source, Map<String, Named> names, double value) {
        return of(source, names).filter(f -> Math.abs(f.value() - value) <= 1e-9 * Math.max(1e-12, Math.abs(value)));
    }

    private Formula sum() {
        Formula left = product();
        while (peek() == '+' || peek() == '-') {
            left = joined(left, take(), product());
        }
        return left;
    }

    private Formula product() {
        Formula left = power();
        while (peek() == '*' || peek() == '/') {
            left = joined(left, take(), power());
        }
        return left;
    }

    /** Spreadsheets read a power from the left and a minus before it; brackets take the question away. */
    private Formula power() {
        Formula base = single();
        if (peek() != '^') {
            return base;
        }
        take();
        Formula exponent = power();
        return new Formula("(" + base.text() + "^" + exponent.text() + ")", Math.pow(base.value(), exponent.value()));
    }

    private Formula single() {
        char c = peek();
        if (c == '-') {
            take();
            Formula of = power();
            return new Formula("(-" + of.text() + ")", -of.value());
        }
        if (c == '(') {
            take();
            Formula inner = sum();
            expect(')');
            return new Formula("(" + inner.text() + ")", inner.value());
        }
        return Character.isDigit(c) || c == '.' ? number() : name();
    }

    private Formula number() {
        int from = at;
        while (at < source.length() && isNumberPart(at)) {
            at++;
        }
        String digits = source.substring(from, at);
        try {
            return new Formula(digits, Double.parseDouble(digits));
        } catch (NumberFormatException no) {
            throw new NotArithmetic();
        }
    }

    private boolean isNumberPart(int i) {
        char c = source.charAt(i);
        boolean exponentSign = (c == '-' || c == '+') && (source.charAt(i - 1) == 'e' || source.charAt(i - 1) == 'E');
        boolean exponent = (c == 'e' || c == 'E')
                && i + 1 < source.length()
                && (Character.isDigit(source.charAt(i + 1))
                        || source.charAt(i + 1) == '-'
                        || source.charAt(i + 1) == '+');
        return c >= '0' && c <= '9' || c == '.' || exponent || exponentSign;
    }

    private Formula name() {
        int from = at;
        while (at < source.length() && isNamePart(source.charAt(at))) {
            at++;
        }
        Named named = names.get(source.substring(from, at));
        if (named == null) {
            throw new NotArithmetic();
        }
        return new Formula(named.cell(), named.value());
    }

    private static boolean isNamePart(char c) {
        return Character.isLetterOrDigit(c) || c == '_' || c == '.';
    }

    private static Formula joined(Formula left, char sign, Formula right) {
        double value = switch (sign) {
            case '+' -> left.value() + right.value();
            case '-' -> left.value() - right.value();
            case '*' -> left.value() * right.value();
            default -> left.value() / right.value();
        };
        return new Formula(left.text() + sign + right.text(), value);
    }

    /** The next sign that is no space, 0 at the end. */
    private char peek() {
        while (at < source.length() && Character.isWhitespace(source.charAt(at))) {
            at++;
        }
        return at < source.length() ? source.charAt(at) : 0;
    }

    private char take() {
        char c = peek();
        at++;
        return c;
    }

    private void expect(char c) {
        if (take() != c) {
            throw new NotArithmetic();
        }
    }

    /** Not a formula of this kind; never leaves this class. */
    private static final class NotArithmetic extends RuntimeException {
        private static final long serialVersionUID = 1;

        NotArithmetic() {
            super(null, null, false, false);
        }
    }
}
