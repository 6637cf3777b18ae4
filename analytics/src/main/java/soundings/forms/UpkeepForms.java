package soundings.forms;

import java.util.List;

/** The sheets of the companion workbook for jobs put off, light, and the testing itself. */
final class UpkeepForms {
    private static final String TANKS = Choices.filled("Tanks", "Tank");

    private UpkeepForms() {}

    static Form jobs() {
        return new Form(
                "Jobs",
                "What is to be mended or done one day. Notes in the log are found by themselves; write here what the log does not say, "
                        + "and the day a job was done.",
                List.of(
                        Field.words("Tank", 22, "The tank it concerns.").from(TANKS),
                        Field.words(
                                        "Job",
                                        40,
                                        "What is to be done, in your words. A job noted in the log as well is taken as one.")
                                .key(),
                        Field.day("Noticed", "The day it was first seen."),
                        Field.words(
                                        "At risk",
                                        24,
                                        "Animals' lives, fire, flood, or slow harm. Blank: by the equipment named in the job.")
                                .from(Choices.list("At risk")),
                        Field.words("Done", 12, "The day it was done, or yes. Blank: still open.")));
    }

    static Form light() {
        return new Form(
                "Light",
                "The light you want at a place, in numbers: \u201chigh light\u201d means different things to different people.",
                List.of(
                        Field.words("Tank", 22, "Blank: all tanks.").from(TANKS),
                        Field.words("Place", 22, "The place as your notes name it: left rock, sand.")
                                .key(),
                        Field.number(
                                "PAR low", 10, "The least you want there, micromoles per square metre and second."),
                        Field.number("PAR high", 10, "The most you want there."),
                        Field.number("Hours a day", 12, "How long the lamps are on; gives the light of a day.")
                                .within(0, 24)));
    }

    static Form tests() {
        return new Form(
                "Tests",
                "How often you mean to test, and what a test costs. Every cell may stay blank.",
                List.of(
                        Field.words("Parameter", 18, "The test.").key().from(Choices.list("Test")),
                        Field.number("Every days", 11, "Days between two tests. Blank: as you usually do."),
                        Field.number("Price a test", 12, "In your own money."),
                        Field.day("Kit expires", "The last day printed on the kit."),
                        Field.number("Wait minutes", 13, "How long to wait before the result is read.")));
    }
}
