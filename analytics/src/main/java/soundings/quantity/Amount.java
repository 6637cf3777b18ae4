package soundings.quantity;

import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/** A test's result as a keeper can state it. The unit stands beside it, in the scale or the parameter. */
public sealed interface Amount {
    <R> R match(
            Function<Exact, R> exact, Function<Below, R> below, Function<Above, R> above, Function<Between, R> between);

    /** The same amount on another scale; {@code rising} must be strictly increasing. */
    default Amount on(DoubleUnaryOperator rising) {
        return match(
                e -> new Exact(rising.applyAsDouble(e.value())),
                b -> new Below(rising.applyAsDouble(b.limit())),
                a -> new Above(rising.applyAsDouble(a.limit())),
                b -> new Between(rising.applyAsDouble(b.low()), rising.applyAsDouble(b.high())));
    }

    /** A number to place the amount by (a chart, a plausibility check), never to compute with: the limit, or the middle. */
    default double about() {
        return match(Exact::value, Below::limit, Above::limit, b -> (b.low() + b.high()) / 2);
    }

    record Exact(double value) implements Amount {
        public Exact {
            value = Finite.checked(value);
        }

        @Override
        public <R> R match(
                Function<Exact, R> exact,
                Function<Below, R> below,
                Function<Above, R> above,
                Function<Between, R> between) {
            return exact.apply(this);
        }
    }

    /** Under a kit's first step, as in {@code <0.02}. */
    record Below(double limit) implements Amount {
        public Below {
            limit = Finite.checked(limit);
        }

        @Override
        public <R> R match(
                Function<Exact, R> exact,
                Function<Below, R> below,
                Function<Above, R> above,
                Function<Between, R> between) {
            return below.apply(this);
        }
    }

    /** Over a kit's last step, as in {@code >50}. */
    record Above(double limit) implements Amount {
        public Above {
            limit = Finite.checked(limit);
        }

        @Override
        public <R> R match(
                Function<Exact, R> exact,
                Function<Below, R> below,
                Function<Above, R> above,
                Function<Between, R> between) {
            return above.apply(this);
        }
    }

    /** Between two steps, as in {@code 0.03-0.06}. */
    record Between(double low, double high) implements Amount {
        public Between {
            low = Finite.checked(low);
            high = Finite.checked(high);
            if (low > high) {
                throw new IllegalArgumentException("between " + low + " and " + high + ": the first is the larger");
            }
        }

        @Override
        public <R> R match(
                Function<Exact, R> exact,
                Function<Below, R> below,
                Function<Above, R> above,
                Function<Between, R> between) {
            return between.apply(this);
        }
    }
}
