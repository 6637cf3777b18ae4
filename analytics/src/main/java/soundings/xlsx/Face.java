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

    /** A share shown in hundredths, with a per cent sign. */
    static Face share(Part part, int decimals) {
        return new Face(part, number(part, decimals, "").format() + "%", Tone.PLAIN, false);
    }

    static Face day(Part part) {
        return new Face(part, "yyyy-mm-dd", Tone.PLAIN, false);
    }

    /** What a cell is on the page, with the size of its letters in points. */
    enum Part {
        TITLE(16, true),
        SUBTITLE(Lettering.POINTS, false),
        HEADING(13, true),
        SUBHEADING(11, true),
        PROSE(Lettering.POINTS, false),
        FINDING(11, true),
        CAUTION(Lettering.POINTS, false),
        QUOTE(Lettering.POINTS, false),
        QUIET(8, false),
        LINK(Lettering.POINTS, false),
        CAPTION(Lettering.POINTS, true),
        HEADER(Lettering.POINTS, true),
        /** Over numbers and days, which stand to the right. */
        HEADER_RIGHT(Lettering.POINTS, true),
        BODY(Lettering.POINTS, false),
        RESULT(Lettering.POINTS, true),
        ANSWER(Lettering.POINTS, false);

        private final int points;
        private final boolean bold;

        Part(int points, boolean bold) {
            this.points = points;
            this.bold = bold;
        }

        int points() {
            return points;
        }

        boolean isBold() {
            return bold;
        }

        /** What stands above it in points, to part it from what comes before. */
        double above() {
            return switch (this) {
                case HEADING, CAPTION -> 8;
                case SUBHEADING -> 14;
                default -> 0;
            };
        }
    }
}
