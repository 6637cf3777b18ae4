package soundings.reference;

import java.util.List;

/** A row of {@code units.csv}: {@code base = (written - offset) x factor}; the base is the dimension's. */
record Unit(String id, Dimension dimension, double factor, double offset, String assumption) {
    static final List<String> COLUMNS = List.of("id", "dimension", "factor", "offset", "assumption", "source");

    /** Bases: mg/L, mmol/L, degC, the number itself. */
    enum Dimension {
        mass,
        amount,
        temperature,
        plain
    }

    static Unit of(Row row) {
        double factor = row.number("factor");
        if (!(factor > 0)) {
            throw row.broken("a factor is above zero");
        }
        return new Unit(
                row.text("id"),
                row.constant("dimension", Dimension.class),
                factor,
                row.number("offset"),
                row.textOrNone("assumption"));
    }

    boolean counts() {
        return dimension == Dimension.mass || dimension == Dimension.amount;
    }
}
