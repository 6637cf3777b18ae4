package soundings.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.sheet.FormatCode;
import soundings.sheet.Look;
import soundings.sheet.Serials;
import soundings.sheet.Value;

/** One cell style of a workbook: what its number format makes of a number, and the looks its cells share. */
final class Style {
    static final Style PLAIN = new Style("General", false, false);

    private final Optional<Value.Shows> shows;
    private final boolean elapsed;
    private final List<Look> looks = new ArrayList<>();

    Style(String format, boolean bold, boolean struck) {
        FormatCode code = FormatCode.of(format);
        shows = code.shows();
        elapsed = code.isElapsed();
        for (int i = 0; i < 8; i++) {
            looks.add(new Look(format, bold, struck || (i & 4) != 0, (i & 1) != 0, (i & 2) != 0));
        }
    }

    /** @param struckText whether the text itself is struck out, run by run, rather than by the cell's font */
    Look look(boolean hidden, boolean formula, boolean struckText) {
        return looks.get((hidden ? 1 : 0) + (formula ? 2 : 0) + (struckText ? 4 : 0));
    }

    /** A stored number: a moment where the format shows one. A span of a day or more ({@code [h]:mm}) stays a number. */
    Value value(double number, boolean from1904) {
        if (shows.isEmpty() || !Serials.isDate(number) || (elapsed && number >= 1)) {
            return new Value.Numeric(number);
        }
        return new Value.Moment(number, Serials.moment(number, from1904), shows.get());
    }

    /** What the format shows of a day number, if it shows one. */
    Optional<Value.Shows> shows() {
        return shows;
    }
}
