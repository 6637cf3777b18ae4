package soundings.chemistry;

/**
 * A word of a keeper and what it stands for.
 *
 * @param text folded as {@link Names#fold}
 * @param means a parameter id, a scale's unit text, a role, depending on {@code kind}
 * @param scope for a unit: the parameter id it is limited to, empty for all
 */
public record Alias(String text, Kind kind, String means, String scope) {
    /** What sort of word it is. */
    public enum Kind {
        /** A parameter's name: {@code kh}, {@code carb. hardness}, {@code po4}. */
        PARAMETER,
        /** A unit's spelling: {@code ppm}, {@code µg/l}. Means a unit token that, with a parameter, finds a scale. */
        UNIT,
        /** A column's role: date, time, tank, test, result, unit, note, dose, waterChange, additive, from, until, by. */
        ROLE,
        /** A word for "no result": {@code n/a}, {@code skipped}, {@code forgot}. */
        NOTHING,
        /** A word that marks a derived row: {@code avg}, {@code total}. */
        DERIVED,
        /** A word for a change of water, or for changed water where a volume or a share stands beside it. */
        CHANGE,
        /** A word of titles and sheets' names: one for a tank, one any log may have, one only sentences have. */
        TITLE,
        /** A word that tells of an event: {@code new carbon}. Means the event's kind. */
        EVENT,
        /** A word that tells of a repair: a fault, a sign of one, a wish, a deed, a denial, what is still to come. */
        JOB,
        /** A word beside a dose: that it takes another one's place. */
        DOSE,
        /** A word of a sentence that tells how much is dosed: which way it goes, that it ended, from when, once or a day's. */
        DOSING,
        /** A word beside one for a loss: a denial, missing, again, what is no animal. */
        LOSS,
        /** A piece of equipment. Means its id among the parts. */
        PART,
        /** A place in a tank, for light. */
        PLACE,
        /** A word of treated animals and new tanks: a sign of illness, its absence, a dose given, the end of a course. */
        CARE
    }
}
