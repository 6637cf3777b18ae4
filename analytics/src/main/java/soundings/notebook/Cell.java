package soundings.notebook;

import java.time.LocalDate;
import java.util.function.Function;
import soundings.quantity.Interval;

/** What one place of a table holds. */
public sealed interface Cell {
    /** Nothing to say here. */
    Cell NOTHING = new Words("", Tone.PLAIN, "");

    static Cell words(String text) {
        return new Words(text, Tone.PLAIN, "");
    }

    <R> R match(
            Function<Words, R> words,
            Function<Number, R> number,
            Function<Range, R> range,
            Function<Day, R> day,
            Function<Spark, R> spark);

    /** Words; {@code target} is the id they lead to, empty for none. */
    record Words(String text, Tone tone, String target) implements Cell {
        @Override
        public <R> R match(
                Function<Words, R> words,
                Function<Number, R> number,
                Function<Range, R> range,
                Function<Day, R> day,
                Function<Spark, R> spark) {
            return words.apply(this);
        }
    }

    /** A number in its column's unit, {@code unit} where this cell differs (empty: the column's). */
    @SuppressWarnings("JavaLangClash") // what a reader of a table calls it
    record Number(double value, int decimals, String unit) implements Cell {
        @Override
        public <R> R match(
                Function<Words, R> words,
                Function<Number, R> number,
                Function<Range, R> range,
                Function<Day, R> day,
                Function<Spark, R> spark) {
            return number.apply(this);
        }
    }

    /** A middle with its 90 % interval. */
    record Range(Interval value, int decimals, String unit) implements Cell {
        @Override
        public <R> R match(
                Function<Words, R> words,
                Function<Number, R> number,
                Function<Range, R> range,
                Function<Day, R> day,
                Function<Spark, R> spark) {
            return range.apply(this);
        }
    }

    record Day(LocalDate on) implements Cell {
        @Override
        public <R> R match(
                Function<Words, R> words,
                Function<Number, R> number,
                Function<Range, R> range,
                Function<Day, R> day,
                Function<Spark, R> spark) {
            return day.apply(this);
        }
    }

    record Spark(ChartSpec.SparkLine line) implements Cell {
        @Override
        public <R> R match(
                Function<Words, R> words,
                Function<Number, R> number,
                Function<Range, R> range,
                Function<Day, R> day,
                Function<Spark, R> spark) {
            return spark.apply(this);
        }
    }
}
