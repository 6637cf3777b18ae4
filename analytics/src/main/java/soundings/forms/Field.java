package soundings.forms;

import java.util.OptionalDouble;

/**
 * One column of a form.
 *
 * @param width in characters
 * @param choices a formula that gives the entries of a drop-down list, empty for none; {@code [Header]} stands for a column's letter
 * @param note what belongs here, shown when the cell is entered and pinned to the header
 * @param span outside of it an entry is tinted as possibly mistyped
 */
record Field(String header, int width, Holds holds, Part part, String choices, String note, Span span) {
    static Field words(String header, int width, String note) {
        return new Field(header, width, Holds.WORDS, Part.ASKED, "", note, Span.ANY);
    }

    static Field number(String header, int width, String note) {
        return new Field(header, width, Holds.NUMBER, Part.ASKED, "", note, Span.ANY);
    }

    static Field day(String header, String note) {
        return new Field(header, 12, Holds.DAY, Part.ASKED, "", note, Span.ANY);
    }

    /** A column the program writes anew each time. */
    static Field ours(String header, int width, String note) {
        return new Field(header, width, Holds.WORDS, Part.OURS, "", note, Span.ANY);
    }

    Field key() {
        return new Field(header, width, holds, Part.KEY, choices, note, span);
    }

    Field needed() {
        return new Field(header, width, holds, Part.NEEDED, choices, note, span);
    }

    Field confirmed() {
        return new Field(header, width, holds, Part.CONFIRMED, choices, note, span);
    }

    Field from(String formula) {
        return new Field(header, width, holds, part, formula, note, span);
    }

    Field within(double low, double high) {
        return new Field(
                header, width, holds, part, choices, note, new Span(OptionalDouble.of(low), OptionalDouble.of(high)));
    }

    /** What is typed into the column; only a hint, words are taken everywhere. */
    enum Holds {
        WORDS,
        NUMBER,
        DAY,
        TIME
    }

    /** Whose column it is. */
    enum Part {
        /** Tells one row from another. */
        KEY,
        ASKED,
        /** Asked for, and something cannot be answered without it: tinted while it is blank beside a filled key. */
        NEEDED,
        /** Tinted while it is blank and what stands there was worked out instead of read. */
        CONFIRMED,
        /** Written by the program, anew each time. */
        OURS
    }

    /** Both ends or neither. */
    record Span(OptionalDouble low, OptionalDouble high) {
        static final Span ANY = new Span(OptionalDouble.empty(), OptionalDouble.empty());
    }
}
