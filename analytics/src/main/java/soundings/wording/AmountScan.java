package soundings.wording;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import soundings.quantity.Amount;

/** Reads one amount that begins at a place of a plain text; says where it ended. */
final class AmountScan {
    private static final Set<String> ABOUT = Set.of(
            "ca",
            "c",
            "circa",
            "about",
            "approx",
            "approximately",
            "around",
            "roughly",
            "etwa",
            "ungefahr",
            "environ",
            "aprox",
            "ongeveer",
            "nearly",
            "almost",
            "env",
            "unos",
            "unas",
            "rund",
            "rond");
    private static final Set<String> BELOW = Set.of(
            "<", "≤", "＜", "⩽", "≦", "under", "below", "unter", "less", "weniger", "moins", "menos", "minder", "meno");
    private static final Set<String> ABOVE = Set.of(">", "≥", "＞", "⩾", "≧", "over", "above", "uber", "more");
    private static final Set<String> THAN = Set.of("than", "als", "de", "dan", "di");
    private static final Set<String> FOOTNOTES = Set.of("*", "†", "‡");
    private static final Set<String> TO = Set.of("-", "to", "bis", "tot");
    private static final Set<String> GIVE_OR_TAKE = Set.of("±", "+/-", "+-", "-/+");

    private static final int MOST_PREFIXES = 6;

    private enum Bound {
        NONE,
        BELOW,
        ABOVE
    }

    /** An amount and one past its last character. */
    record Found(WrittenAmount amount, int end) {}

    private final String plain;
    private final DecimalMark mark;
    private final boolean spaced;
    private int at;
    private Bound bound = Bound.NONE;
    private boolean approximate;
    private boolean plusBehind;
    private final StringBuilder marks = new StringBuilder();

    private AmountScan(String plain, int at, DecimalMark mark, boolean spaced) {
        this.plain = plain;
        this.at = at;
        this.mark = mark;
        this.spaced = spaced;
    }

    static Optional<Found> at(String plain, int at, DecimalMark mark) {
        return new AmountScan(plain, at, mark, true).read();
    }

    /** In running text, where a space parts two numbers. */
    static Optional<Found> inText(String plain, int at, DecimalMark mark) {
        return new AmountScan(plain, at, mark, false).read();
    }

    private Optional<Found> read() {
        prefix();
        int sign = sign();
        int end = Numerals.end(plain, at, spaced);
        if (end == at) {
            return Optional.empty();
        }
        String first = plain.substring(at, end);
        at = end;
        Optional<String> second = bound == Bound.NONE && sign > 0 ? upperEnd() : Optional.empty();
        giveOrTake();
        trailing();
        return second.isPresent() ? range(first, second.get()) : single(first, sign);
    }

    private void prefix() {
        boolean more = true;
        for (int words = 0; more && words < MOST_PREFIXES; words++) {
            spaces();
            String word = wordHere();
            more = !word.isEmpty() && prefixWord(word);
            at += more ? word.length() : 0;
        }
    }

    private boolean prefixWord(String word) {
        if (FOOTNOTES.contains(word)) {
            marks.append(word);
        } else if (word.equals("~") || ABOUT.contains(word)) {
            approximate = true;
        } else if (BELOW.contains(word) && bound == Bound.NONE) {
            bound = Bound.BELOW;
        } else if (ABOVE.contains(word) && bound == Bound.NONE) {
            bound = Bound.ABOVE;
        } else {
            return word.equals(".") && approximate && at > 0 && Tokens.letter(plain.charAt(at - 1))
                    || (word.equals("=") || THAN.contains(word)) && bound != Bound.NONE;
        }
        return true;
    }

    private String wordHere() {
        int end = at;
        while (end < plain.length() && Tokens.letter(plain.charAt(end))) {
            end++;
        }
        return end > at ? plain.substring(at, end) : at < plain.length() ? plain.substring(at, at + 1) : "";
    }

    private int sign() {
        boolean signed = at < plain.length() && (plain.charAt(at) == '-' || plain.charAt(at) == '+');
        if (!signed) {
            return 1;
        }
        int sign = plain.charAt(at) == '-' ? -1 : 1;
        if (sign > 0) {
            marks.append('+');
        }
        at++;
        spaces();
        return sign;
    }

    private void spaces() {
        while (at < plain.length() && plain.charAt(at) == ' ') {
            at++;
        }
    }

    private Optional<String> upperEnd() {
        int back = at;
        spaces();
        String word = wordHere();
        if (TO.contains(word)) {
            at += word.length();
            spaces();
            int end = Numerals.end(plain, at, spaced);
            if (end > at) {
                String figures = plain.substring(at, end);
                at = end;
                return Optional.of(figures);
            }
        }
        at = back;
        return Optional.empty();
    }

    /** {@code 8.2 ± 0.1}: the figure, with a doubt. */
    private void giveOrTake() {
        int back = at;
        spaces();
        Optional<String> sign =
                GIVE_OR_TAKE.stream().filter(s -> plain.startsWith(s, at)).findFirst();
        at += sign.map(String::length).orElse(0);
        spaces();
        int end = sign.isPresent() ? Numerals.end(plain, at, false) : at;
        approximate |= end > at;
        at = end > at ? end : back;
    }

    private void trailing() {
        while (at < plain.length() && "?*†‡!#^+¹²³⁰⁴⁵⁶⁷⁸⁹".indexOf(plain.charAt(at)) >= 0) {
            char c = plain.charAt(at++);
            approximate |= c == '?';
            plusBehind |= c == '+';
            marks.append(c == '?' ? "" : c);
        }
    }

    private Optional<Found> single(String figures, int sign) {
        OptionalDouble value = Numerals.with(figures, mark);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        bound = plusBehind && bound == Bound.NONE ? Bound.ABOVE : bound;
        Amount amount = bounded(sign * value.getAsDouble());
        Optional<Amount> otherwise =
                other(figures).stream().mapToObj(v -> bounded(sign * v)).findFirst();
        return found(amount, otherwise, figures);
    }

    private Amount bounded(double value) {
        return switch (bound) {
            case NONE -> new Amount.Exact(value);
            case BELOW -> new Amount.Below(value);
            case ABOVE -> new Amount.Above(value);
        };
    }

    /** The value with the mark that was not taken, where the text allows both and they differ. */
    private OptionalDouble other(String figures) {
        OptionalDouble point = Numerals.withPoint(figures);
        OptionalDouble comma = Numerals.withComma(figures);
        if (point.isEmpty() || comma.isEmpty() || point.getAsDouble() == comma.getAsDouble()) {
            return OptionalDouble.empty();
        }
        return mark == DecimalMark.COMMA ? point : comma;
    }

    private Optional<Found> range(String from, String to) {
        OptionalDouble low = Numerals.with(from, mark);
        OptionalDouble high = Numerals.with(to, mark);
        if (low.isEmpty() || high.isEmpty() || low.getAsDouble() > high.getAsDouble()) {
            return Optional.empty();
        }
        Amount amount = low.getAsDouble() == high.getAsDouble()
                ? new Amount.Exact(low.getAsDouble())
                : new Amount.Between(low.getAsDouble(), high.getAsDouble());
        return found(amount, otherRange(from, to), to);
    }

    private Optional<Amount> otherRange(String from, String to) {
        OptionalDouble low = other(from);
        OptionalDouble high = other(to);
        boolean both = low.isPresent() && high.isPresent() && low.getAsDouble() <= high.getAsDouble();
        return both ? Optional.of(new Amount.Between(low.getAsDouble(), high.getAsDouble())) : Optional.empty();
    }

    private Optional<Found> found(Amount amount, Optional<Amount> otherwise, String figures) {
        int decimals = decimals(figures);
        return Optional.of(new Found(
                new WrittenAmount(amount, otherwise, "", approximate, false, marks.toString(), "", decimals), at));
    }

    private int decimals(String figures) {
        boolean comma = mark == DecimalMark.COMMA
                ? Numerals.withComma(figures).isPresent()
                : Numerals.withPoint(figures).isEmpty();
        int last = figures.lastIndexOf(comma ? ',' : '.');
        return last < 0 ? 0 : figures.length() - last - 1;
    }
}
