package soundings.workbook;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import soundings.sheet.Serials;
import soundings.sheet.Value;
import soundings.sheet.Value.Shows;

/** Dates stored as text in ISO 8601, as the strict OOXML dialect and OpenDocument do. */
final class IsoMoments {
    private IsoMoments() {}

    /** @param ofBoth what to show where both a date and a time are stored */
    static Optional<Value> find(String iso, boolean from1904, Shows ofBoth) {
        String local = iso.endsWith("Z") ? iso.substring(0, iso.length() - 1) : iso;
        try {
            if (local.indexOf('T') > 0) {
                return Optional.of(moment(LocalDateTime.parse(local), from1904, ofBoth));
            }
            if (local.indexOf(':') > 0) {
                double fraction = LocalTime.parse(local).toSecondOfDay() / 86_400.0;
                return Optional.of(new Value.Moment(fraction, Serials.moment(fraction, from1904), Shows.TIME));
            }
            return Optional.of(moment(LocalDate.parse(local).atStartOfDay(), from1904, Shows.DATE));
        } catch (DateTimeException notIso) {
            return Optional.empty();
        }
    }

    private static Value moment(LocalDateTime at, boolean from1904, Shows shows) {
        double serial = Serials.serial(at, from1904);
        return Serials.isDate(serial) ? new Value.Moment(serial, at, shows) : new Value.Text(at.toString());
    }
}
