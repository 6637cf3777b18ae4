package soundings.advice;

import java.util.Map;

/**
 * Plain arithmetic over named numbers: identifiers, numerals, {@code + - * /} and parentheses, so that a spreadsheet can hold the
 * same formula.
 */
final class Formulas {
    private final String text;
    private final Map<String, Double> values;
    private int at;

    private Formulas(String text, Map<String, Double> values) {
        this.text = text.replace(" ", "");
        this.values = values;
    }

    /** @throws IllegalArgumentException for anything but arithmetic over the names given */
    static double value(String formula, Map<String, Double> values) {
        Formulas reading = new Formulas(formula, values);
        double value = reading.sum();
        if (reading.at < reading.text.length()) {
            throw reading.wrong();
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (ahead('+') || ahead('-')) {
            char sign = text.charAt(at++);
            double next = product();
            value = sign == '+' ? value + next : value - next;
        }
        return value;
    }

    private double product() {
        double value = factor();
        while (ahead('*') || ahead('/')) {
            char sign = text.charAt(at++);
            double next = factor();
            value = sign == '*' ? value * next : value / next;
        }
        return value;
    }

    private double factor() {
        if (ahead('(')) {
            at++;
            double value = sum();
            if (!ahead(')')) {
                throw wrong();
            }
            at++;
            return value;
        }
        return word();
    }

    private double word() {
        int from = at;
        while (at < text.length()
                && (Character.isLetterOrDigit(text.charAt(at)) || "_.".indexOf(text.charAt(at)) >= 0)) {
            at++;
        }
        String word = text.substring(from, at);
        if (word.isEmpty()) {
            throw wrong();
        }
        Double named = values.get(word);
        return named != null ? named : number(word);
    }

    private double number(String word) {
        if (!word.matches("\\d+(\\.\\d+)?")) {
            throw new IllegalArgumentException("'" + word + "' is not among " + values.keySet());
        }
        return Double.parseDouble(word);
    }

    private boolean ahead(char c) {
        return at < text.length() && text.charAt(at) == c;
    }

    private IllegalArgumentException wrong() {
        return new IllegalArgumentException("not plain arithmetic at " + at + " of " + text);
    }
}
