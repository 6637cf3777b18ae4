package soundings.sheet;

import java.time.LocalDateTime;
import java.util.function.Function;

/** What a cell holds, before anyone asks what it means. A formula counts as the value it was saved with. */
public sealed interface Value {
    <R> R match(
            Function<Text, R> text,
            Function<Numeric, R> numeric,
            Function<Moment, R> moment,
            Function<Flag, R> flag,
            Function<Fault, R> fault);

    record Text(String text) implements Value {
        @Override
        public <R> R match(
                Function<Text, R> text,
                Function<Numeric, R> numeric,
                Function<Moment, R> moment,
                Function<Flag, R> flag,
                Function<Fault, R> fault) {
            return text.apply(this);
        }
    }

    record Numeric(double number) implements Value {
        @Override
        public <R> R match(
                Function<Text, R> text,
                Function<Numeric, R> numeric,
                Function<Moment, R> moment,
                Function<Flag, R> flag,
                Function<Fault, R> fault) {
            return numeric.apply(this);
        }
    }

    /** A number shown as a date or a time: the serial as stored, and the moment it stands for in the workbook's own epoch. */
    record Moment(double serial, LocalDateTime at, Shows shows) implements Value {
        @Override
        public <R> R match(
                Function<Text, R> text,
                Function<Numeric, R> numeric,
                Function<Moment, R> moment,
                Function<Flag, R> flag,
                Function<Fault, R> fault) {
            return moment.apply(this);
        }
    }

    record Flag(boolean on) implements Value {
        @Override
        public <R> R match(
                Function<Text, R> text,
                Function<Numeric, R> numeric,
                Function<Moment, R> moment,
                Function<Flag, R> flag,
                Function<Fault, R> fault) {
            return flag.apply(this);
        }
    }

    /** An error value such as {@code #DIV/0!}, or a formula saved without a value ({@code code} is then {@code "no value"}). */
    record Fault(String code) implements Value {
        @Override
        public <R> R match(
                Function<Text, R> text,
                Function<Numeric, R> numeric,
                Function<Moment, R> moment,
                Function<Flag, R> flag,
                Function<Fault, R> fault) {
            return fault.apply(this);
        }
    }

    /** What a moment's number format shows. */
    enum Shows {
        DATE,
        TIME,
        DATE_AND_TIME
    }
}
