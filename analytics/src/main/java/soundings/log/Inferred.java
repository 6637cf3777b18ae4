package soundings.log;

/** What about an entry was worked out and not written. */
public enum Inferred {
    UNIT,
    PARAMETER,
    TANK,
    DATE_ORDER,
    YEAR,
    DATE,
    DECIMAL_MARK,
    DECIMAL_PLACE,
    KIT
}
