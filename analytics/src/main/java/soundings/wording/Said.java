package soundings.wording;

import java.util.Optional;
import java.util.function.Function;
import soundings.chemistry.Parameter;
import soundings.quantity.Amount;

/** What a phrase of running text says. */
public sealed interface Said {
    <R> R match(
            Function<Test, R> test,
            Function<Rate, R> rate,
            Function<OneOff, R> oneOff,
            Function<Change, R> change,
            Function<Remark, R> remark);

    /** A result. The amount's unit is empty where none is written. */
    record Test(Parameter parameter, WrittenAmount amount) implements Said {
        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Rate, R> rate,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Remark, R> remark) {
            return test.apply(this);
        }
    }

    /**
     * From now, or from a day named, an additive goes in at this rate; zero stops it.
     *
     * @param additive the keeper's own name for it where known, else as written; empty when none is named
     * @param daysLater from which day, counted from the day of the text: 1 {@code from tomorrow}, -1 {@code since yesterday}
     * @param mlPerDay how much; where it is told by the setting before, how many times that or how much more
     */
    record Rate(String additive, double mlPerDay, Optional<WrittenDate> from, Told told, int daysLater)
            implements Said {
        /** How a rate is told. */
        public enum Told {
            A_DAY,
            /** "A day" is not written; it is one only where a dose a day stood before. */
            SETTING,
            /** {@code doubled}, {@code halved}: in times of the setting before. */
            TIMES,
            /** {@code still at 60 ml a day}: as it was. */
            STILL,
            /** {@code raised alk 45 ml a day}: the new dose, or what was added; less than zero where it was lowered. */
            EITHER,
            /** {@code same dose as before}: what it was before it ended. */
            AGAIN,
            /** {@code raised by 5 ml}: what is added to the setting before, or taken from it where it is negative. */
            STEP
        }

        Rate(String additive, double mlPerDay, Optional<WrittenDate> from) {
            this(additive, mlPerDay, from, Told.A_DAY, 0);
        }

        public boolean assumed() {
            return told == Told.SETTING;
        }

        public boolean relative() {
            return told == Told.TIMES || told == Told.STEP || told == Told.AGAIN || told == Told.EITHER;
        }

        /** Of this additive, where none is named. */
        Said named(String other) {
            return additive.isEmpty() ? new Rate(other, mlPerDay, from, told, daysLater) : this;
        }

        Rate of(String other) {
            return new Rate(other, mlPerDay, from, told, daysLater);
        }

        Rate since(Optional<WrittenDate> day) {
            return new Rate(additive, mlPerDay, day, told, daysLater);
        }

        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Rate, R> rate,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Remark, R> remark) {
            return rate.apply(this);
        }
    }

    /** Put in once; {@code additive} as in {@link Rate}. */
    record OneOff(String additive, double ml) implements Said {
        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Rate, R> rate,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Remark, R> remark) {
            return oneOff.apply(this);
        }
    }

    /** Water changed. */
    record Change(Amount amount, VolumeUnit unit) implements Said {
        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Rate, R> rate,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Remark, R> remark) {
            return change.apply(this);
        }
    }

    /**
     * Anything else.
     *
     * @param kind an event's kind as the reference names it, {@code symptom}, {@code note}; or {@code unread} where a test, a dose
     *     or a water change and a number stand in the words and no rule explains them
     */
    record Remark(String kind, String text) implements Said {
        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Rate, R> rate,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Remark, R> remark) {
            return remark.apply(this);
        }
    }
}
