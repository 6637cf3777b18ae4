package soundings.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;

/** The sheets of a blank log: tests a row a day and tank, and a sheet each for what happens less often. */
final class StarterForms {
    static final String HAPPENINGS = "Happenings";

    /** Tests a keeper makes at home; what only a laboratory measures has its own sheet. */
    private static final List<Test> AT_HOME = List.of(
            new Test("temperature", "Temperature (\u00b0C)", 14),
            new Test("salinity", "Salinity (psu)", 11),
            new Test("ph", "pH", 8),
            new Test("alkalinity", "Alkalinity (dKH)", 11),
            new Test("calcium", "Calcium (mg/L)", 11),
            new Test("magnesium", "Magnesium (mg/L)", 13),
            new Test("nitrate", "Nitrate (mg/L)", 11),
            new Test("phosphate", "Phosphate (mg/L)", 12),
            new Test("ammonia", "Total ammonia nitrogen (mg/L)", 16),
            new Test("nitrite", "Nitrite (mg/L)", 11));

    private static final String TANKS = Choices.filled("Tanks", "Tank");
    private static final String TANK_NOTE =
            "The tank's name, always written alike; list your tanks on the sheet Tanks. Only one tank: leave it blank.";

    private StarterForms() {}

    static List<Form> of(Reference reference) {
        return List.of(tanks(), tests(reference), doses(), waterChanges(), events(), light(reference), laboratory());
    }

    private static Form tanks() {
        return new Form(
                "Tanks",
                "The names the drop-down lists offer.",
                List.of(Field.words("Tank", 24, "A row a tank. These names are offered on the other sheets.")
                        .key()));
    }

    private static Field date() {
        return Field.day("Date", "The day, as year-month-day: 2026-04-23.").key();
    }

    private static Field tank() {
        return Field.words("Tank", 16, TANK_NOTE).from(TANKS);
    }

    private static Form tests(Reference reference) {
        List<Field> fields = new ArrayList<>(List.of(date(), time(), tank()));
        AT_HOME.stream().flatMap(t -> t.field(reference).stream()).forEach(fields::add);
        fields.add(Field.words("Note", 40, "Anything else about these tests."));
        return new Form("Tests", "A row for each time you test a tank. Leave blank what you did not test.", fields);
    }

    private static Field time() {
        return new Field(
                "Time",
                8,
                Field.Holds.TIME,
                Field.Part.ASKED,
                "",
                "The hour, as 18:30, where it matters (pH). May stay blank.",
                Field.Span.ANY);
    }

    /** A test with a column of its own. */
    private record Test(String parameter, String header, int width) {
        private static final String NOTE =
                "The result. Less than the kit can show: <0.02. Between two colours: 0.03-0.06. "
                        + "A tint asks: no tank reads so, was it mistyped?";

        Optional<Field> field(Reference reference) {
            return reference
                    .findParameter(parameter)
                    .map(p -> Field.number(header, width, NOTE).within(p.plausibleLow(), p.plausibleHigh()));
        }
    }

    private static Form doses() {
        return new Form(
                "Doses",
                "A row each time a dose changes. It holds until the next row of the same additive; 0 stops it.",
                List.of(
                        date(),
                        tank(),
                        Field.words("Additive", 24, "What is dosed, always written alike."),
                        Field.number("Dose (mL/day)", 14, "The whole day's amount from this day on; 0 stops it."),
                        Field.words("Note", 50, "Why it was changed.")));
    }

    private static Form waterChanges() {
        return new Form(
                "Water changes",
                "A row a water change, in per cent or in litres.",
                List.of(
                        date(),
                        tank(),
                        Field.number("Water change (%)", 16, "How much of the tank, in per cent: 10 for 10 %."),
                        Field.number("Water change (L)", 16, "Or how many litres. One of the two is enough."),
                        Field.words("Note", 50, "Salt, batch, what else was done.")));
    }

    private static Form events() {
        return new Form(
                "Events",
                "A row for everything else: new carbon, a lamp, a new bottle, animals in and out, losses, feeding, what to mend, how a treated animal looks.",
                List.of(
                        date(),
                        tank(),
                        Field.words("Event", 26, "What happened, in a word or two; the list has some.")
                                .from(Choices.list(HAPPENINGS)),
                        Field.words(
                                "Note",
                                70,
                                "The rest of the story: three spots, no spots, 500 mg given, return pump rattles.")));
    }

    private static Form light(Reference reference) {
        Parameter par = reference.parameter("par");
        return new Form(
                "Light",
                "A row each time you measure light, with the place: light differs more between two places than between two lamps.",
                List.of(
                        date(),
                        tank(),
                        Field.words("Measured at", 24, "The place, always written alike: left rock, sand."),
                        Field.number("PAR (\u00b5mol/m\u00b2/s)", 16, "What the light meter read there, under water.")
                                .within(par.plausibleLow(), par.plausibleHigh()),
                        Field.words("Note", 50, "Lamp, strength, height.")));
    }

    private static Form laboratory() {
        return new Form(
                "Laboratory",
                "A row a result of a laboratory report. Take the unit from the report.",
                List.of(
                        Field.day("Date", "The day the sample was taken, not the day of the report.")
                                .key(),
                        tank(),
                        Field.words("Test", 18, "The element or test.").from(Choices.list("Test")),
                        Field.number("Result", 12, "As the report has it: 0.062, <0.5"),
                        Field.words("Unit", 14, "As the report has it; the list follows the test.")
                                .from(Choices.unitsOf("Test")),
                        Field.words("Method", 24, "The laboratory or the method.")));
    }
}
