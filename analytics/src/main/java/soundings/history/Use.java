package soundings.history;

/** What became of a reading. */
public enum Use {
    USED,
    OUTLIER,
    DUPLICATE,
    EXCLUDED
}
