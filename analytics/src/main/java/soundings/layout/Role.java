package soundings.layout;

/** What a column of a table holds. */
enum Role {
    DATE("date"),
    /** The first day a rate applies; serves as the date where no other stands. */
    FROM("date"),
    UNTIL("until"),
    TIME("time"),
    /** The month, where the column of dates holds its days only. */
    MONTH("month"),
    YEAR("year"),
    TANK("tank"),
    /** Names the parameter of its row. */
    TEST("test"),
    /** The amounts of the parameter named in the row. */
    RESULT("result"),
    UNIT("unit"),
    /** Names the additive of its row. */
    ADDITIVE("additive"),
    /** Amounts of the parameter named in the header. */
    READING("reading"),
    DOSE("dose"),
    /** How many times a day the dose of its row goes in. */
    TIMES("times a day"),
    WATER_CHANGE("waterChange"),
    NOTE("note"),
    METHOD("method"),
    /** How much, of what the rest of the table tells. */
    AMOUNT("amount"),
    /** What something cost: its table is no log of a tank. */
    PRICE("price"),
    /** Averages, totals, differences: worked out from other cells. */
    DERIVED("derived"),
    /** Known and of no use here, or switched off by the keeper. */
    IGNORED("ignored"),
    UNKNOWN("unknown");

    private final String meaning;

    Role(String meaning) {
        this.meaning = meaning;
    }

    /** The word for it in what is shown to the keeper. */
    String meaning() {
        return meaning;
    }

    boolean dates() {
        return this == DATE || this == FROM;
    }

    /** Whether its word may stand in the corner of a table, over dates and for the names beside them: {@code Tank}, {@code Test}. */
    boolean corner() {
        return this == TIME || this == TANK || this == TEST || this == UNIT || this == RESULT || this == ADDITIVE;
    }

    /** Whether its cells give entries. */
    boolean gives() {
        return this == READING || this == RESULT || this == DOSE || this == WATER_CHANGE || this == NOTE;
    }
}
