package soundings.layout;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import soundings.log.Inferred;

/** Whose water a row's cells speak of, and when. {@code refused}: why nothing there may be used, empty otherwise. */
record Where(
        String tank,
        LocalDate date,
        Optional<LocalTime> time,
        int row,
        Set<Inferred> inferred,
        String method,
        String refused) {

    Where in(String other) {
        return other.isEmpty() ? this : new Where(other, date, time, row, inferred, method, refused);
    }

    /** @param way of testing, where the row itself tells none */
    Where by(String way) {
        return way.isEmpty() || !method.isEmpty() ? this : new Where(tank, date, time, row, inferred, way, refused);
    }

    Where inferring(Inferred what) {
        Set<Inferred> more = new HashSet<>(inferred);
        more.add(what);
        return new Where(tank, date, time, row, more, method, refused);
    }

    Where on(LocalDate day, Inferred how) {
        return new Where(tank, day, time, row, inferred, method, refused).inferring(how);
    }

    /** @param hour where the row itself tells none */
    Where at(LocalTime hour) {
        return time.isPresent() ? this : new Where(tank, date, Optional.of(hour), row, inferred, method, refused);
    }

    Where refuse(String why) {
        return new Where(tank, date, time, row, inferred, method, why);
    }
}
