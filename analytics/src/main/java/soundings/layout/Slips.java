package soundings.layout;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import soundings.chemistry.Scale;
import soundings.quantity.Amount;

/** What a figure that cannot stand may be meant as: its decimal mark forgotten or moved, a zero left out of a specific gravity. */
final class Slips {
    private Slips() {}

    /** The first such figure that reads as this parameter usually does, as text. */
    static Optional<String> meant(Amount amount, Scale scale, Typical typical) {
        double figure = amount.match(e -> e.value(), b -> Double.NaN, a -> Double.NaN, b -> Double.NaN);
        Stream<Double> gravity = figure > 1.1 && figure < 2 ? Stream.of(1 + (figure - 1) / 10) : Stream.of();
        return Stream.concat(gravity, List.of(0.1, 10.0, 0.01, 100.0).stream().map(f -> figure * f))
                .filter(m -> Double.isFinite(m) && m > 0 && typical.near(scale.canonical(m)))
                .findFirst()
                .map(Slips::text);
    }

    private static String text(double figure) {
        return new BigDecimal(figure)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
