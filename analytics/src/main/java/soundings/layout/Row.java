package soundings.layout;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;
import soundings.log.Inferred;

/**
 * A record of a table with its day settled.
 *
 * @param date empty when no day can be told
 * @param own whether the day stands in this very line
 * @param several whether its day is only the first of several that are written
 * @param refused why nothing of this line may be used, empty otherwise
 */
record Row(
        Line line,
        Optional<LocalDate> date,
        Optional<LocalTime> time,
        boolean own,
        Set<Inferred> inferred,
        boolean several,
        String refused) {

    Row refuse(String why) {
        return new Row(line, date, time, own, inferred, several, why);
    }

    Row on(LocalDate day, Set<Inferred> how) {
        return new Row(line, Optional.of(day), time, own, how, several, refused);
    }
}
