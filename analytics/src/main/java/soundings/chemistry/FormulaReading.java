package soundings.chemistry;

import java.util.LinkedHashMap;
import java.util.Map;

/** Recursive descent over {@code formula = part ('·' part)*; part = number? group+; group = (symbol | '(' group+ ')') number?}. */
final class FormulaReading {
    private final String text;
    private int at;

    FormulaReading(String text) {
        this.text = text;
    }

    Map<String, Double> read() {
        Map<String, Double> atoms = part();
        while (at < text.length() && text.charAt(at) == '·') {
            at++;
            add(atoms, part(), 1);
        }
        if (at < text.length()) {
            throw unexpected();
        }
        return atoms;
    }

    private Map<String, Double> part() {
        double times = number();
        Map<String, Double> atoms = new LinkedHashMap<>();
        add(atoms, groups(), times);
        return atoms;
    }

    private Map<String, Double> groups() {
        Map<String, Double> atoms = new LinkedHashMap<>();
        int start = at;
        while (at < text.length() && startsGroup(text.charAt(at))) {
            Map<String, Double> one = isUpper(text.charAt(at)) ? Map.of(symbol(), 1.0) : bracketed();
            add(atoms, one, number());
        }
        if (at == start) {
            throw unexpected();
        }
        return atoms;
    }

    private Map<String, Double> bracketed() {
        char close = text.charAt(at) == '(' ? ')' : ']';
        at++;
        Map<String, Double> inner = groups();
        if (at >= text.length() || text.charAt(at) != close) {
            throw unexpected();
        }
        at++;
        return inner;
    }

    private String symbol() {
        int start = at++;
        while (at < text.length() && Character.isLowerCase(text.charAt(at))) {
            at++;
        }
        return text.substring(start, at);
    }

    /** A count; absent counts one. */
    private double number() {
        int start = at;
        while (at < text.length() && (isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        double count = start == at ? 1 : Double.parseDouble(text.substring(start, at));
        if (count <= 0) {
            throw unexpected();
        }
        return count;
    }

    private static void add(Map<String, Double> to, Map<String, Double> atoms, double times) {
        atoms.forEach((symbol, count) -> to.merge(symbol, count * times, Double::sum));
    }

    private static boolean startsGroup(char c) {
        return isUpper(c) || c == '(' || c == '[';
    }

    private static boolean isUpper(char c) {
        return c >= 'A' && c <= 'Z';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private IllegalArgumentException unexpected() {
        String seen = at < text.length() ? "'" + text.charAt(at) + "'" : "the end";
        return new IllegalArgumentException(
                "'" + text + "' is no chemical formula: did not expect " + seen + " at character " + (at + 1));
    }
}
