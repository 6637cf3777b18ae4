package soundings.chemistry;

/**
 * Something a keeper measures.
 *
 * @param id the contract's name, such as {@code alkalinity}
 * @param unit canonical unit, UCUM where UCUM has one
 * @param decimals digits shown after the point in reports
 * @param plausibleLow in the canonical unit: no living marine tank reads lower
 * @param plausibleHigh in the canonical unit: no living marine tank reads higher
 */
public record Parameter(
        String id,
        String name,
        String symbol,
        String unit,
        int decimals,
        double plausibleLow,
        double plausibleHigh,
        Kind kind) {

    /** What a parameter is, as far as estimates and advice treat it alike. */
    public enum Kind {
        /** Follows the seawater's dilution and is used up or dosed: calcium, magnesium, potassium ... */
        ION,
        /** Used up or dosed, in traces: iodine, strontium, metals. */
        TRACE,
        /** Comes from feeding and is exported: nitrate, phosphate, silicate. */
        NUTRIENT,
        /** Poison of a young or crowded tank: ammonia, nitrite. */
        TOXIN,
        /** Not a mass balance: temperature, pH, salinity. */
        CONDITION,
        /** Of a place in the tank and not of its water: readings at two places make no series. */
        LIGHT
    }

    /** Whether a mass balance (dose in, water change, use) describes it. */
    public boolean balances() {
        return isOfTheWater() && kind != Kind.CONDITION;
    }

    /** Whether all of a tank's readings of it tell of one thing. */
    public boolean isOfTheWater() {
        return kind != Kind.LIGHT;
    }
}
