package soundings.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A value as text, in a fixed notation that no machine's language changes: decimal point, ISO dates. */
final class ShownText {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private ShownText() {}

    static String of(Value value, Look look) {
        return value.match(
                Value.Text::text,
                numeric -> number(numeric.number()) + (look.format().endsWith("%") ? " (shown as %)" : ""),
                ShownText::moment,
                flag -> flag.on() ? "TRUE" : "FALSE",
                Value.Fault::code);
    }

    static String number(double number) {
        if (number == Math.rint(number) && Math.abs(number) < 1e15) {
            return Long.toString((long) number);
        }
        return new BigDecimal(number, new MathContext(15)).stripTrailingZeros().toPlainString();
    }

    private static String moment(Value.Moment moment) {
        return switch (moment.shows()) {
            case DATE -> moment.at().toLocalDate().toString();
            case TIME -> TIME.format(moment.at());
            case DATE_AND_TIME -> moment.at().toLocalDate() + " " + TIME.format(moment.at());
        };
    }
}
