package soundings.wording;

import java.util.function.Function;
import soundings.chemistry.Parameter;

/** What a header can stand for. */
public sealed interface Meaning {
    <R> R match(
            Function<Test, R> test,
            Function<Dose, R> dose,
            Function<OneOff, R> oneOff,
            Function<Change, R> change,
            Function<Role, R> role);

    /** Results of one test. {@code unit} as the reference spells it, or as written where it is unknown; empty when none is written. */
    record Test(Parameter parameter, String unit) implements Meaning {
        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Dose, R> dose,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Role, R> role) {
            return test.apply(this);
        }
    }

    /**
     * The rate an additive is dosed at.
     *
     * @param additive the keeper's own name for it where that is known, else as written; empty when none is written
     * @param mlPerDay millilitres a day that one of the column's numbers is
     */
    record Dose(String additive, double mlPerDay) implements Meaning {
        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Dose, R> dose,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Role, R> role) {
            return dose.apply(this);
        }
    }

    /** What was put in by hand that day; {@code additive} as in {@link Dose}. */
    record OneOff(String additive, VolumeUnit unit) implements Meaning {
        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Dose, R> dose,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Role, R> role) {
            return oneOff.apply(this);
        }
    }

    /** Water changed. */
    record Change(VolumeUnit unit) implements Meaning {
        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Dose, R> dose,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Role, R> role) {
            return change.apply(this);
        }
    }

    /** A column's part in the table, as the reference's role words name it; {@code derived} for targets, averages and the like. */
    record Role(String role) implements Meaning {
        @Override
        public <R> R match(
                Function<Test, R> test,
                Function<Dose, R> dose,
                Function<OneOff, R> oneOff,
                Function<Change, R> change,
                Function<Role, R> role) {
            return role.apply(this);
        }
    }
}
