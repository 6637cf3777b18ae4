package soundings.history;

import soundings.log.Reading;

/** A reading and what became of it; {@code because} is empty when it is used. */
public record Point(Reading reading, Use use, String because) {
    public boolean used() {
        return use == Use.USED;
    }
}
