package soundings.wording;

import java.util.List;
import java.util.function.Function;

/** What the text of a cell says about an amount. */
public sealed interface AmountText {
    <R> R match(
            Function<Written, R> written,
            Function<Several, R> several,
            Function<Steps, R> steps,
            Function<Nothing, R> nothing,
            Function<Unreadable, R> unreadable);

    /** One amount. */
    record Written(WrittenAmount amount) implements AmountText {
        @Override
        public <R> R match(
                Function<Written, R> written,
                Function<Several, R> several,
                Function<Steps, R> steps,
                Function<Nothing, R> nothing,
                Function<Unreadable, R> unreadable) {
            return written.apply(this);
        }
    }

    /** Several amounts side by side, as in {@code 1.025 / 34}: the same thing on two scales, or two tests. */
    record Several(List<WrittenAmount> amounts) implements AmountText {
        public Several {
            amounts = List.copyOf(amounts);
        }

        @Override
        public <R> R match(
                Function<Written, R> written,
                Function<Several, R> several,
                Function<Steps, R> steps,
                Function<Nothing, R> nothing,
                Function<Unreadable, R> unreadable) {
            return several.apply(this);
        }
    }

    /** A count of a kit's own steps ({@code 7 drops}); an amount only with the kit's factor. */
    record Steps(WrittenAmount count, String step) implements AmountText {
        @Override
        public <R> R match(
                Function<Written, R> written,
                Function<Several, R> several,
                Function<Steps, R> steps,
                Function<Nothing, R> nothing,
                Function<Unreadable, R> unreadable) {
            return steps.apply(this);
        }
    }

    /** Nothing was written down ({@code n/a}, {@code -}), or with {@code ditto} the same as above. */
    record Nothing(String word, boolean ditto) implements AmountText {
        @Override
        public <R> R match(
                Function<Written, R> written,
                Function<Several, R> several,
                Function<Steps, R> steps,
                Function<Nothing, R> nothing,
                Function<Unreadable, R> unreadable) {
            return nothing.apply(this);
        }
    }

    /** Something stands there that no rule explains; {@code why} reads behind "set aside:". */
    record Unreadable(String why) implements AmountText {
        @Override
        public <R> R match(
                Function<Written, R> written,
                Function<Several, R> several,
                Function<Steps, R> steps,
                Function<Nothing, R> nothing,
                Function<Unreadable, R> unreadable) {
            return unreadable.apply(this);
        }
    }
}
