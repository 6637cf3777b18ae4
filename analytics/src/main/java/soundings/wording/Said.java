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
     * @param assumed whether "a day" is not written; then it is one only where a dose a day stood before
     */
    record Rate(String additive, double mlPerDay, Optional<WrittenDate> from, boolean assumed) implements Said {
        Rate(String additive, double mlPerDay, Optional<WrittenDate> from) {
            this(additive, mlPerDay, from, false);
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
