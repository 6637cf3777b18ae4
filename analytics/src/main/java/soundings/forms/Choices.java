package soundings.forms;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import soundings.chemistry.Alias;
import soundings.chemistry.Parameter;
import soundings.chemistry.Part;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;

/** The entries of the drop-down lists: each list a column of one sheet, each formula the reach of one of them. */
record Choices(List<Column> columns) {
    static final String SHEET = "Lists (Soundings)";

    /** Room for entries below a header; a list longer than this is not offered in full. */
    private static final int ROOM = 200;

    Choices {
        columns = List.copyOf(columns);
    }

    /** A list; a blank one is filled in by the keeper. */
    record Column(String header, List<String> entries) {
        Column {
            entries = List.copyOf(entries);
        }
    }

    /** Tests, the units of each, and what a column can mean. */
    static Choices of(Reference reference) {
        List<Parameter> parameters = reference.parameters();
        List<Scale> scales =
                parameters.stream().flatMap(p -> reference.scales(p).stream()).toList();
        return new Choices(List.of(
                new Column("Test", parameters.stream().map(Parameter::id).toList()),
                new Column(
                        "Test of unit",
                        scales.stream().map(s -> s.parameter().id()).toList()),
                new Column("Unit", scales.stream().map(Scale::label).toList()),
                new Column("Meaning", meanings(reference)),
                new Column("Yes or no", List.of("yes", "no")),
                new Column(
                        "At risk",
                        Arrays.stream(Part.Harm.values())
                                .filter(h -> h != Part.Harm.UNKNOWN)
                                .map(Part.Harm::words)
                                .toList()),
                new Column("Dose in", List.of("mg", "g", "mg/L"))));
    }

    Choices with(Column column) {
        return new Choices(Stream.concat(columns.stream(), Stream.of(column)).toList());
    }

    private static List<String> meanings(Reference reference) {
        Stream<String> roles = reference.aliases(Alias.Kind.ROLE).stream().map(Alias::means);
        Stream<String> tests = reference.parameters().stream().map(Parameter::id);
        return Stream.of(tests, roles, Stream.of("ignored"))
                .flatMap(s -> s)
                .distinct()
                .toList();
    }

    /** The filled part of one of the lists. */
    static String list(String header) {
        return filled(SHEET, header);
    }

    /**
     * The filled part of a column of any sheet, from its second row down. {@code [Sheet.Header]} stands for the column's letter, which
     * is known once the sheet is.
     */
    static String filled(String sheet, String header) {
        String column = "'" + sheet + "'!$[" + sheet + "." + header + "]$";
        String all = column + "2:$[" + sheet + "." + header + "]$" + (ROOM + 1);
        return "OFFSET(" + column + "2,0,0,MAX(1,COUNTA(" + all + ")),1)";
    }

    /** The units of the test named under {@code header} in the same row. */
    static String unitsOf(String header) {
        String tests = "'" + SHEET + "'!$B$1:$B$" + (ROOM * 5);
        String test = "$[" + header + "]2";
        return "OFFSET('" + SHEET + "'!$C$1,MATCH(" + test + "," + tests + ",0)-1,0,COUNTIF(" + tests + "," + test
                + "),1)";
    }
}
