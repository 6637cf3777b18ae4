package soundings.forms;

import java.util.List;

/** The sheets of the companion workbook, as the contract names them, and what each column asks for. */
final class SetupForms {
    static final String FOUND = "Found in the log";
    static final String AS_READ = "As read";
    static final String HOW_SURE = "How sure";
    static final String EXAMPLES = "Examples";
    static final String IF_BLANK = "If left blank";
    static final String CHOICES = "Choices";

    private static final String TESTS = Choices.list("Test");
    private static final String MEANINGS = Choices.list("Meaning");
    private static final String YES_NO = Choices.list("Yes or no");
    private static final String TANKS = Choices.filled("Tanks", "Tank");
    private static final String ADDITIVES = Choices.filled("Additives", "Additive");
    private static final String OURS = " Written anew each time; what you type here is not kept.";

    static final List<Form> ALL = List.of(
            tanks(),
            freshMix(),
            targets(),
            additives(),
            kits(),
            pumps(),
            CareForms.treatments(),
            CareForms.moves(),
            UpkeepForms.jobs(),
            UpkeepForms.light(),
            UpkeepForms.tests(),
            columns(),
            preferences());

    private SetupForms() {}

    private static Form tanks() {
        return new Form(
                "Tanks",
                "One row a tank. Without litres no dose can be worked out.",
                List.of(
                        Field.words("Tank", 22, "The tank's name as reports shall say it.")
                                .key(),
                        Field.words(
                                        "Litres",
                                        12,
                                        "Water in the whole system, rock and sump taken into account. "
                                                + "A number is litres; another unit is written behind it: 80 US gal.")
                                .needed(),
                        Field.words("Written as", 30, "Other names of this tank in the log, with ; between them."),
                        Field.day("Since", "The day it was filled; blank if it does not matter."),
                        Field.ours(FOUND, 50, "What the log holds of this tank." + OURS)));
    }

    private static Form freshMix() {
        return new Form(
                "Fresh mix",
                "What the new water of a water change reads. Test it once a batch: a water change moves the tank toward it.",
                List.of(
                        Field.words("Tank", 22, "Blank: the same mix for all tanks.")
                                .from(TANKS),
                        Field.words("Parameter", 18, "The test.").key().from(TESTS),
                        Field.number("Value", 12, "What fresh mix reads.").needed(),
                        Field.words("Unit", 18, "The unit of the value; the list follows the test.")
                                .from(Choices.unitsOf("Parameter"))));
    }

    private static Form targets() {
        return new Form(
                "Targets",
                "The range to keep a test in. Fill in Low and High only where you want another range than the one used otherwise.",
                List.of(
                        Field.words("Tank", 22, "Blank: all tanks.").from(TANKS),
                        Field.words("Parameter", 18, "The test.").key().from(TESTS),
                        Field.number("Low", 10, "The lowest value you want. Fill in both ends or neither."),
                        Field.number("High", 10, "The highest value you want. Fill in both ends or neither."),
                        Field.words("Unit", 18, "The unit of both ends; the list follows the test.")
                                .from(Choices.unitsOf("Parameter")),
                        Field.ours(IF_BLANK, 54, "The range used while Low and High are blank." + OURS)));
    }

    private static Form additives() {
        return new Form(
                "Additives",
                "What each additive does: so many mL of it in so many litres of water raise a test by so much. "
                        + "A name does not tell the strength: take it from the label, or from the recipe.",
                List.of(
                        Field.words("Additive", 24, "The name reports shall use.")
                                .key(),
                        Field.words("Written as", 26, "Other names of it in the log, with ; between them."),
                        Field.words(
                                        "Parameter",
                                        18,
                                        "The test it raises. One that raises several tests takes a row for each.")
                                .needed()
                                .from(TESTS),
                        Field.number(
                                        "Rise",
                                        10,
                                        "By how much, as the label says it. Leave blank when you give a recipe.")
                                .needed(),
                        Field.words("Unit", 14, "The unit of the rise; the list follows the test.")
                                .from(Choices.unitsOf("Parameter")),
                        Field.number("Of mL", 9, "How many mL of the additive cause that rise. Blank: 1."),
                        Field.number("In litres", 10, "In how much water. Blank: 100 litres."),
                        Field.words("Recipe", 34, "For your own solution: KI 5 g in 1 L."),
                        Field.number("Max rise a day", 13, "The most you allow in a day, in the test's own unit."),
                        Field.ours(FOUND, 50, "How the log doses it." + OURS)));
    }

    private static Form kits() {
        return new Form(
                "Kits",
                "How exact a test is. The step is the smallest difference the kit can show.",
                List.of(
                        Field.words("Parameter", 18, "The test.").key().from(TESTS),
                        Field.words("Kit", 24, "As the log names it; blank: whatever is used for this test.")
                                .key(),
                        Field.number("Step", 10, "The smallest difference the kit shows."),
                        Field.number("Error", 10, "How far a result scatters, one standard deviation, if you know it."),
                        Field.words("Unit", 16, "The unit of all numbers in this row.")
                                .from(Choices.unitsOf("Parameter")),
                        Field.day("From", "The day this kit came into use."),
                        Field.number("Reference true", 14, "What a reference solution should read."),
                        Field.number("Reference read", 14, "What this kit read in it.")));
    }

    private static Form pumps() {
        return new Form(
                "Pumps",
                "Dosing pumps and their containers: when each runs empty, and whether a pump gives what it is told to.",
                List.of(
                        Field.words("Tank", 22, "The tank it doses.").key().from(TANKS),
                        Field.words("Additive", 24, "What it doses.").key().from(ADDITIVES),
                        Field.number("Doses a day", 12, "In how many parts the day's amount is given."),
                        Field.number("Container mL", 13, "What the container holds when full."),
                        Field.day("Filled on", "The day it was last filled."),
                        Field.number("Commanded mL", 14, "For a check: what the pump was told to give."),
                        Field.number("Measured mL", 13, "For a check: what came out.")));
    }

    private static Form columns() {
        return new Form(
                "Columns",
                "How each column of the log was read stands under As read. What is blank stays as it was read; what you write binds. "
                        + "A tinted cell was worked out and not written: confirm or correct it.",
                List.of(
                        Field.words("Sheet", 20, "The log's sheet.").key(),
                        Field.words("Block", 12, "The table on that sheet.").key(),
                        Field.words("Header", 24, "The column's heading in the log.")
                                .key(),
                        Field.words(
                                        "Meaning",
                                        16,
                                        "What the column holds: a test, or date, tank, dose, note ... "
                                                + "Blank: as it was read.")
                                .confirmed()
                                .from(MEANINGS),
                        Field.words("Unit", 16, "The unit its numbers are in. Blank: as it was read.")
                                .confirmed()
                                .from(Choices.unitsOf("Meaning")),
                        Field.words("Tank", 18, "The tank its entries belong to. Blank: as it was read.")
                                .confirmed()
                                .from(TANKS),
                        Field.words("Use", 8, "no: leave this column out. Blank or yes: use it.")
                                .from(YES_NO),
                        Field.ours(AS_READ, 74, "How the column was understood." + OURS),
                        Field.ours(HOW_SURE, 20, "How sure that is." + OURS),
                        Field.ours(EXAMPLES, 30, "Some of its cells as they stand." + OURS)));
    }

    private static Form preferences() {
        return new Form(
                "Preferences",
                "Choices for the whole log. Every one may stay blank.",
                List.of(
                        Field.words("Name", 22, "The choice.").key(),
                        Field.words("Value", 22, "Your answer."),
                        Field.ours(CHOICES, 50, "What can stand under Value." + OURS),
                        Field.ours(IF_BLANK, 50, "What is done without an answer." + OURS)));
    }
}
