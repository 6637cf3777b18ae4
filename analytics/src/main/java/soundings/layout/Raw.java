package soundings.layout;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.log.AsWritten;
import soundings.log.Inferred;
import soundings.log.Reading;
import soundings.quantity.Amount;
import soundings.wording.WrittenAmount;

/**
 * A result found in its cell, its scale not yet settled.
 *
 * @param unit the unit standing with it, in its row or its phrase; empty when it goes by the heading alone
 * @param amount as written
 * @param refused why it must not be used, empty otherwise
 */
record Raw(
        Place place,
        Parameter parameter,
        WrittenAmount amount,
        String unit,
        String method,
        boolean approximate,
        Set<Inferred> inferred,
        String refused,
        AsWritten at) {

    /** Whose water it was, and when. */
    record Place(String tank, LocalDate date, Optional<LocalTime> time, int row) {}

    Raw inferring(Inferred what) {
        Set<Inferred> more = new HashSet<>(inferred);
        more.add(what);
        return new Raw(place, parameter, amount, unit, method, approximate, more, refused, at);
    }

    /** @param canonical the amount in the parameter's own unit */
    Reading reading(Amount canonical, Scale scale, String why) {
        return new Reading(
                place.tank(),
                place.date(),
                place.time(),
                parameter,
                canonical,
                scale,
                inferred,
                method,
                approximate,
                why,
                at);
    }
}
