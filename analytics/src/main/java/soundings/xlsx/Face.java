package soundings.xlsx;

import soundings.notebook.Tone;

/** How a cell looks: what part of the page it is, its number format, and how its words are to be taken. */
record Face(Part part, String format, Tone tone, boolean quoted) {
    static Face of(Part part) {
        return new Face(part, "", Tone.PLAIN, false);
    }

    static Face words(Part part, Tone tone, String text) {
        return new Face(part, "", tone, CellText.looksLikeFormula(text));
    }

    /** @param unit shown behind the number, empty for none */
    static Face number(Part part, int decimals, String unit) {
        String digits = decimals <= 0 ? "0" : "0." + "0".repeat(Math.min(10, decimals));
        String shown = unit.isEmpty() ? "" : "\" " + unit.replace("\"", "").replace("\\", "") + "\"";
        return new Face(part, digits + shown, Tone.PLAIN, false);
    }

    static Face day(Part part) {
        return new Face(part, "yyyy-mm-dd", Tone.PLAIN, false);
    }

    /** What a cell is on the page. */
    enum Part {
        TITLE,
        SUBTITLE,
        HEADING,
        SUBHEADING,
        PROSE,
        FINDING,
        CAUTION,
        QUOTE,
        QUIET,
        LINK,
        CAPTION,
        HEADER,
        /** Over numbers and days, which stand to the right. */
        HEADER_RIGHT,
        BODY,
        RESULT,
        ANSWER
    }
}
