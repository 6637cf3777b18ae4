package soundings.estimate;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.log.AsWritten;
import soundings.log.Reading;
import soundings.quantity.Amount;
import soundings.sheet.CellRef;

/** Small made-up values for the tests of this package. */
final class Samples {
    static final Parameter ALKALINITY =
            new Parameter("alkalinity", "Alkalinity", "Alk", "dKH", 2, 2, 25, Parameter.Kind.ION);

    private Samples() {}

    static Scale plain(Parameter parameter) {
        return new Scale(parameter, parameter.unit(), parameter.unit(), "", w -> w, c -> c);
    }

    static Reading reading(Parameter parameter, LocalDate date, Amount amount) {
        return reading(parameter, date, amount, "");
    }

    static Reading reading(Parameter parameter, LocalDate date, Amount amount, String method) {
        AsWritten at = new AsWritten("Log", new CellRef((int) (date.toEpochDay() % 10000), 1), "" + amount.about());
        return new Reading(
                "Reef A", date, Optional.empty(), parameter, amount, plain(parameter), Set.of(), method, false, "", at);
    }

    static Sight sight(double value) {
        return sight(value, value);
    }

    static Sight sight(double low, double high) {
        double about = Double.isInfinite(low) ? high : low;
        return new Sight(reading(ALKALINITY, LocalDate.of(2026, 1, 1), new Amount.Exact(about)), low, high, 0, 1, 0);
    }
}
