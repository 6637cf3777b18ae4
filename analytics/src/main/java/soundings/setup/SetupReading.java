package soundings.setup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import soundings.chemistry.Names;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.log.AsWritten;
import soundings.log.Issue;
import soundings.setup.SheetTable.Row;
import soundings.sheet.Book;
import soundings.wording.DoseSubject;
import soundings.wording.Vocabulary;
import soundings.wording.VolumeUnit;

/** The companion workbook, sheet by sheet. A row that cannot be read becomes an issue with its place; the rest is kept. */
public final class SetupReading {
    private SetupReading() {}

    public static Setup of(Book book, Reference reference) {
        List<Issue> issues = new ArrayList<>();
        Map<String, String> preferences = preferences(book);
        Cells cells = cells(reference, preferences, issues);
        return new Setup(
                rows(book, "Tanks", "Tank", issues, row -> tank(row, cells)),
                rows(book, "Fresh mix", "Parameter", issues, row -> freshMix(row, cells)),
                rows(book, "Targets", "Parameter", issues, row -> target(row, cells)),
                rows(book, "Additives", "Additive", issues, row -> AdditiveRow.read(row, cells)),
                rows(book, "Kits", "Parameter", issues, row -> kit(row, cells)),
                rows(book, "Pumps", "Additive", issues, row -> pump(row, cells)),
                rows(book, "Columns", "Sheet", issues, row -> column(row, cells)),
                preferences,
                issues);
    }

    /** The parameter a keeper's word names, or the one of that id. */
    public static Optional<Parameter> findParameter(Reference reference, String written) {
        return reference.findParameterNamed(written).or(() -> reference.findParameter(Names.fold(written)));
    }

    /** The parameter that an additive's name tells it raises: {@code KH}, {@code KH solution}, {@code alk pump}; empty where it tells more or less. */
    public static Optional<Parameter> findRaised(Reference reference, String additive) {
        return findParameter(reference, additive)
                .or(() -> Optional.of(DoseSubject.of(additive, Vocabulary.of(reference)))
                        .filter(DoseSubject::general)
                        .flatMap(s -> reference.findParameter(s.parameter())));
    }

    static Cells cells(Reference reference, Map<String, String> preferences, List<Issue> issues) {
        String mark = Names.fold(preferences.getOrDefault("decimal mark", ""));
        String order = Names.fold(preferences.getOrDefault("date order", ""));
        String volume = preferences.getOrDefault("volume unit", "");
        return new Cells(
                reference,
                mark.equals(",") || mark.startsWith("comma") ? ',' : mark.isEmpty() ? ' ' : '.',
                order.isEmpty() ? Optional.empty() : Optional.of(order.startsWith("d")),
                VolumeUnit.of(volume).filter(u -> u == VolumeUnit.US_GALLON || u == VolumeUnit.IMPERIAL_GALLON),
                issues);
    }

    static Map<String, String> preferences(Book book) {
        Map<String, String> byName = new LinkedHashMap<>();
        SheetTable.find(book, "Preferences").map(SheetTable::rows).orElse(List.of()).stream()
                .filter(row -> !row.text("Name").isEmpty() && !row.text("Value").isEmpty())
                .forEach(row -> byName.putIfAbsent(Names.fold(row.text("Name")), row.text("Value")));
        return byName;
    }

    private static <T> List<T> rows(
            Book book, String sheet, String key, List<Issue> issues, Function<Row, Optional<T>> read) {
        Optional<SheetTable> table = SheetTable.find(book, sheet);
        if (table.isEmpty() || table.get().grid().cells().isEmpty()) {
            return List.of();
        }
        if (!table.get().has(key)) {
            issues.add(new SetupIssues.MissingColumn(table.get().headerPlace(), sheet, key));
            return List.of();
        }
        Set<String> seen = new HashSet<>();
        return table.get().rows().stream()
                .filter(row -> isNew(row, key, seen, issues))
                .flatMap(row -> read.apply(row).stream())
                .toList();
    }

    /** A tank's litres, an additive's rise on a parameter: each may be said once. */
    private static boolean isNew(Row row, String key, Set<String> seen, List<Issue> issues) {
        String subject = String.join(
                "\u0000",
                List.of(
                        Names.fold(row.text("Tank")),
                        Names.fold(row.text("Additive")),
                        Names.fold(row.text("Parameter")),
                        Names.fold(row.text("Kit")),
                        row.text("From"),
                        Names.fold(row.text("Sheet")),
                        Names.fold(row.text("Block")),
                        Names.fold(row.text("Header"))));
        boolean fresh = seen.add(subject);
        if (!fresh) {
            issues.add(new SetupIssues.RepeatedRow(row.at(key)));
        }
        return fresh;
    }

    private static Optional<Setup.Tank> tank(Row row, Cells cells) {
        return named(row, "Tank", cells)
                .map(name -> new Setup.Tank(
                        name,
                        cells.litres(row, "Litres"),
                        Cells.names(row, "Written as"),
                        cells.date(row, "Since"),
                        row.place("Litres")));
    }

    static Optional<String> named(Row row, String column, Cells cells) {
        AsWritten at = row.at(column);
        if (at.text().isEmpty()) {
            cells.issues().add(new SetupIssues.IncompleteRow(at, Names.fold(column)));
            return Optional.empty();
        }
        return Optional.of(at.text());
    }

    private static Optional<Setup.FreshMix> freshMix(Row row, Cells cells) {
        return cells.parameter(row).flatMap(parameter -> {
            OptionalDouble value = cells.level(row, "Value", parameter);
            return value.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                            new Setup.FreshMix(row.text("Tank"), parameter, value.getAsDouble(), row.place("Value")));
        });
    }

    private static Optional<Setup.Target> target(Row row, Cells cells) {
        return isPrompt(row, "Low", "High")
                ? Optional.empty()
                : cells.parameter(row).flatMap(parameter -> target(row, parameter, cells));
    }

    /** A row that was put there to ask and that nobody has answered. */
    static boolean isPrompt(Row row, String... answers) {
        return Arrays.stream(answers).allMatch(answer -> row.cell(answer).isEmpty());
    }

    /** A test that is to stay under a limit needs no low end: none is zero. */
    private static Optional<Setup.Target> target(Row row, Parameter parameter, Cells cells) {
        OptionalDouble low = cells.level(row, "Low", parameter);
        OptionalDouble high = cells.level(row, "High", parameter);
        boolean fromZero = row.cell("Low").isEmpty() && parameter.balances();
        if (high.isEmpty() || (low.isEmpty() && !fromZero)) {
            cells.issues().add(new SetupIssues.IncompleteRow(row.at("Parameter"), "range that could be read"));
            return Optional.empty();
        }
        if (low.orElse(0) > high.getAsDouble()) {
            cells.issues().add(new SetupIssues.ImplausibleSetting(row.at("Low"), "the low end is above the high end"));
            return Optional.empty();
        }
        return Optional.of(
                new Setup.Target(row.text("Tank"), parameter, low.orElse(0), high.getAsDouble(), row.place("Low")));
    }

    private static Optional<Setup.Kit> kit(Row row, Cells cells) {
        return cells.parameter(row)
                .map(parameter -> new Setup.Kit(
                        parameter,
                        row.text("Kit"),
                        cells.difference(row, "Step", parameter),
                        cells.difference(row, "Error", parameter),
                        cells.date(row, "From"),
                        cells.level(row, "Reference true", parameter),
                        cells.level(row, "Reference read", parameter)));
    }

    private static Optional<Setup.Pump> pump(Row row, Cells cells) {
        return named(row, "Additive", cells)
                .map(additive -> new Setup.Pump(
                        row.text("Tank"),
                        additive,
                        cells.number(row, "Doses a day"),
                        cells.millilitres(row, "Container mL"),
                        cells.date(row, "Filled on"),
                        cells.millilitres(row, "Commanded mL"),
                        cells.millilitres(row, "Measured mL"),
                        row.place("Container mL")));
    }

    private static Optional<Setup.Column> column(Row row, Cells cells) {
        return named(row, "Sheet", cells)
                .map(sheet -> new Setup.Column(
                        sheet,
                        row.text("Block"),
                        row.text("Header"),
                        row.text("Meaning"),
                        row.text("Unit"),
                        row.text("Tank"),
                        cells.yesOrNo(row, "Use")));
    }
}
