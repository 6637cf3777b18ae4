package soundings.setup;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as typed, with the unit behind it: {@code 80 US gal}, {@code 8,2}, {@code 1 200,5 L}.
 *
 * @param value with its one comma or point taken as the decimal mark
 * @param otherwise the same digits with that mark taken as a thousands mark, where that is possible: {@code 1,200}
 * @param comma whether the doubtful mark is a comma
 */
record WrittenNumber(double value, OptionalDouble otherwise, boolean comma, String unit) {
    private static final Pattern SHAPE =
            Pattern.compile("^[~\u2248]?\\s*([+-]?\\d[\\d.,'\u2019 \u00a0\u202f]*)(.*)$", Pattern.DOTALL);
    private static final Pattern MAYBE_THOUSANDS = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern COMMA_THOUSANDS =
            Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+\\.\\d+|[+-]?\\d{1,3}(,\\d{3}){2,}");
    private static final Pattern POINT_THOUSANDS =
            Pattern.compile("[+-]?\\d{1,3}(\\.\\d{3})+,\\d+|[+-]?\\d{1,3}(\\.\\d{3}){2,}");
    private static final Pattern PLAIN = Pattern.compile("[+-]?\\d+([.,]\\d+)?");

    static WrittenNumber of(double number) {
        return new WrittenNumber(number, OptionalDouble.empty(), false, "");
    }

    /** @param decimalMark {@code .} or {@code ,} where the keeper has said which, a space otherwise */
    static Optional<WrittenNumber> parse(String text, char decimalMark) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            return Optional.empty();
        }
        String digits = shape.group(1).replaceAll("['\u2019 \u00a0\u202f]", "").replaceAll("[.,]$", "");
        return number(digits, decimalMark, shape.group(2).strip());
    }

    private static Optional<WrittenNumber> number(String digits, char decimalMark, String unit) {
        if (COMMA_THOUSANDS.matcher(digits).matches()) {
            return Optional.of(sure(digits.replace(",", ""), unit));
        }
        if (POINT_THOUSANDS.matcher(digits).matches()) {
            return Optional.of(sure(digits.replace(".", "").replace(',', '.'), unit));
        }
        if (!PLAIN.matcher(digits).matches()) {
            return Optional.empty();
        }
        return Optional.of(oneMark(digits, decimalMark, unit));
    }

    private static WrittenNumber oneMark(String digits, char decimalMark, String unit) {
        String asDecimal = digits.replace(',', '.');
        if (!MAYBE_THOUSANDS.matcher(digits).matches()) {
            return sure(asDecimal, unit);
        }
        String asThousands = digits.replaceAll("[.,]", "");
        boolean comma = digits.indexOf(',') >= 0;
        if (decimalMark == ' ') {
            return new WrittenNumber(
                    Double.parseDouble(asDecimal), OptionalDouble.of(Double.parseDouble(asThousands)), comma, unit);
        }
        return sure((decimalMark == ',') == comma ? asDecimal : asThousands, unit);
    }

    private static WrittenNumber sure(String digits, String unit) {
        return new WrittenNumber(Double.parseDouble(digits), OptionalDouble.empty(), false, unit);
    }

    /** The one meaning that makes sense; a point in doubt is a decimal point, a comma in doubt has no meaning. */
    OptionalDouble resolved(DoublePredicate plausible) {
        if (otherwise.isEmpty() || (plausible.test(value) && !plausible.test(otherwise.getAsDouble()))) {
            return OptionalDouble.of(value);
        }
        if (!plausible.test(value) && plausible.test(otherwise.getAsDouble())) {
            return otherwise;
        }
        return comma ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
