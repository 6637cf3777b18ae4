package soundings.forms;

import java.util.List;

/** The sheets for treated and moved animals; a course is written down here before it begins, and the log's notes follow it. */
final class CareForms {
    private static final String TANKS = Choices.filled("Tanks", "Tank");

    private CareForms() {}

    static Form treatments() {
        return new Form(
                "Treatments",
                "Courses of treatment as a vet or a label sets them: a row a course. The report counts the days, what water changes took out and "
                        + "the days without a sign; it never says what to give.",
                List.of(
                        Field.words("Tank", 22, "The tank it is given in: never the one with corals, snails and rock.")
                                .key()
                                .from(TANKS),
                        Field.words("Animal", 20, "Who is treated."),
                        Field.words("Medicine", 22, "As your notes call it.").key(),
                        Field.day("Started", "The day of the first dose: day 1.")
                                .key(),
                        Field.number("Amount", 10, "One dose, as the vet or the label says."),
                        Field.words("Unit", 10, "mg, g or mg/L. By volume or drops no level can be reckoned.")
                                .from(Choices.list("Dose in")),
                        Field.number("Every days", 11, "Days from one dose to the next; blank: no rhythm."),
                        Field.number(
                                "Keep at mg per litre",
                                18,
                                "The level to hold in the water; what a change took out is reckoned."),
                        Field.number(
                                "Symptom-free days to end",
                                22,
                                "Your rule: after how many days without a sign the course may end."),
                        Field.day("Ended", "The day it was ended; blank while it runs."),
                        Field.words("Notes", 40, "Who advised it, what the label warns of.")));
    }

    static Form moves() {
        return new Form(
                "Moves",
                "Animals you mean to move: the report sets the two tanks side by side and says what differs too much to move straight over.",
                List.of(
                        Field.words("Animal", 22, "Who is to move.").key(),
                        Field.words("From", 22, "The tank it is in.").key().from(TANKS),
                        Field.words("To", 22, "The tank it goes to.").key().from(TANKS),
                        Field.day("Planned on", "The day; blank: as the tanks are now.")));
    }
}
