package soundings.sheet;

import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A value as text, in a fixed notation that no machine's language changes: decimal point, comma between thousands, ISO dates. */
final class ShownText {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private ShownText() {}

    static String of(Value value, Look look) {
        return value.match(
                Value.Text::text,
                numeric -> number(numeric.number(), look.format()),
                ShownText::moment,
                flag -> flag.on() ? "TRUE" : "FALSE",
                Value.Fault::code);
    }

    private static String number(double number, String format) {
        return format.equals(Look.PLAIN.format())
                ? ShownNumber.plain(number)
                : ShownNumber.of(number, FormatCode.of(format));
    }

    private static String moment(Value.Moment moment) {
        return switch (moment.shows()) {
            case DATE -> moment.at().toLocalDate().toString();
            case TIME -> TIME.format(moment.at());
            case DATE_AND_TIME -> moment.at().toLocalDate() + " " + TIME.format(moment.at());
        };
    }
}
