package soundings.workbook;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import soundings.sheet.Serials;
import soundings.sheet.Value;
import soundings.sheet.Value.Shows;

/** Dates stored as text in ISO 8601, as the strict OOXML dialect and OpenDocument do. */
final class IsoMoments {
    private static final double SECONDS_A_DAY = 86_400;
    private static final long HALF_A_SECOND = 500_000_000;

    private IsoMoments() {}

    /** @param shows what the cell's format shows; empty: all that is stored */
    static Optional<Value> find(String iso, boolean from1904, Optional<Shows> shows) {
        String local = iso.endsWith("Z") ? iso.substring(0, iso.length() - 1) : iso;
        try {
            if (local.indexOf('T') > 0) {
                return Optional.of(moment(LocalDateTime.parse(local), from1904, shows.orElse(Shows.DATE_AND_TIME)));
            }
            if (local.indexOf(':') > 0) {
                return Optional.of(timeOfDay(LocalTime.parse(local).toSecondOfDay(), from1904));
            }
            return Optional.of(moment(LocalDate.parse(local).atStartOfDay(), from1904, shows.orElse(Shows.DATE)));
        } catch (DateTimeException notIso) {
            return Optional.empty();
        }
    }

    /** A span such as {@code PT09H30M00S}: a time where it is less than a day, else a number of days. */
    static Optional<Value> findSpan(String iso) {
        try {
            Duration span = Duration.parse(iso);
            boolean withinADay = !span.isNegative() && span.toDays() == 0;
            return Optional.of(
                    withinADay
                            ? timeOfDay(span.toSeconds(), false)
                            : new Value.Numeric(span.toSeconds() / SECONDS_A_DAY));
        } catch (DateTimeException notIso) {
            return Optional.empty();
        }
    }

    private static Value timeOfDay(long seconds, boolean from1904) {
        double fraction = seconds / SECONDS_A_DAY;
        return new Value.Moment(fraction, Serials.moment(fraction, from1904), Shows.TIME);
    }

    private static Value moment(LocalDateTime stored, boolean from1904, Shows shows) {
        LocalDateTime at = stored.plusNanos(HALF_A_SECOND).truncatedTo(ChronoUnit.SECONDS);
        double serial = Serials.serial(at, from1904);
        return Serials.isDate(serial) ? new Value.Moment(serial, at, shows) : new Value.Text(at.toString());
    }
}
