package soundings.wording;

/** In which order a date written in figures counts. */
public enum DateOrder {
    YEAR_FIRST,
    DAY_FIRST,
    MONTH_FIRST
}
