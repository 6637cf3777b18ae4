package soundings.layout;

import java.util.Optional;
import java.util.OptionalDouble;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.wording.DecimalMark;

/**
 * What every table of a workbook is read with.
 *
 * @param mark the decimal mark of the workbook as a whole
 * @param epochShift days that bare day counts fall later than in a workbook counting from 1900
 */
record Context(
        Words words,
        Reference reference,
        Setup setup,
        Settings settings,
        Tanks tanks,
        DateOrders orders,
        DecimalMark mark,
        long epochShift) {

    /** For a table whose days are written in an order of their own. */
    Context with(DateOrders own) {
        return own.equals(orders) ? this : new Context(words, reference, setup, settings, tanks, own, mark, epochShift);
    }

    /** A preference by its name, lower case. */
    static Optional<String> preference(Setup setup, String name) {
        return setup.preferences().entrySet().stream()
                .filter(e -> e.getKey().strip().equalsIgnoreCase(name)
                        && !e.getValue().isBlank())
                .map(e -> e.getValue().strip())
                .findFirst();
    }

    Optional<String> preference(String name) {
        return preference(setup, name);
    }

    /** The coarsest first step of the kits set up for a test, canonical unit: what is not detected lies below it. */
    OptionalDouble firstStep(Parameter parameter) {
        return setup.kits().stream()
                .filter(k -> k.parameter().equals(parameter))
                .flatMapToDouble(k -> k.step().stream())
                .max();
    }
}
