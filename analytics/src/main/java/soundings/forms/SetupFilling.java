package soundings.forms;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Alias;
import soundings.chemistry.Names;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.log.BlockReading;
import soundings.log.ColumnReading;
import soundings.log.DoseRate;
import soundings.log.Inferred;
import soundings.log.Log;
import soundings.log.LogEntry;
import soundings.log.OneOffDose;
import soundings.log.Reading;
import soundings.log.VolumeTold;

/** What of the companion workbook can be filled in from a log: names and how columns were read, never a number. */
final class SetupFilling {
    private static final int LONGEST_HEADER = 120;

    private final Log log;
    private final Reference reference;
    private final List<Reading> readings;
    private final List<LogEntry> doses;

    private SetupFilling(Log log, Reference reference) {
        this.log = log;
        this.reference = reference;
        this.readings = log.entries().stream().flatMap(SetupFilling::reading).toList();
        this.doses = log.entries().stream()
                .filter(e -> additive(e).filter(a -> !a.isBlank()).isPresent())
                .toList();
    }

    /** Rows by the form they belong to. */
    static Map<String, List<Filled>> of(Log log, Reference reference) {
        SetupFilling filling = new SetupFilling(log, reference);
        Map<String, List<Filled>> rows = new LinkedHashMap<>();
        for (Form form : SetupForms.ALL) {
            rows.put(
                    form.sheet(),
                    filling.cells(form.sheet()).map(c -> Filled.of(form, c)).toList());
        }
        return rows;
    }

    private Stream<Map<String, String>> cells(String sheet) {
        return switch (sheet) {
            case "Tanks" -> tanks();
            case "Fresh mix" -> tested().filter(SetupFilling::comesWithFreshMix).map(p -> Map.of("Parameter", p.id()));
            case "Targets" -> tested().map(this::target);
            case "Additives" -> additives();
            case "Kits" -> kits();
            case "Pumps" -> pumps();
            case "Columns" ->
                log.blocks().stream()
                        .flatMap(b -> b.columns().stream()
                                .filter(SetupFilling::canBeNamed)
                                .map(c -> column(b, c)));
            case "Treatments", "Moves", "Jobs", "Light", "Tests" -> Stream.empty();
            default -> PreferenceRows.ALL.stream();
        };
    }

    /** What the log holds of each tank; the order is the log's. */
    private Stream<Map<String, String>> tanks() {
        Map<String, List<LogEntry>> byTank = log.entries().stream().collect(Collectors.groupingBy(LogEntry::tank));
        return log.tanks().stream()
                .filter(t -> !t.isBlank())
                .map(tank -> Map.of(
                        "Tank",
                        tank,
                        SetupForms.FOUND,
                        amount(byTank.getOrDefault(tank, List.of()), "entries") + volume(tank)));
    }

    private String volume(String tank) {
        return log.issues().stream()
                .filter(VolumeTold.class::isInstance)
                .map(VolumeTold.class::cast)
                .filter(v -> v.tank().equals(tank))
                .findFirst()
                .map(v -> "; " + v.volume() + " is written in " + v.at().place())
                .orElse("");
    }

    private static String amount(List<? extends LogEntry> entries, String what) {
        List<LocalDate> days = entries.stream().map(LogEntry::date).sorted().toList();
        return days.isEmpty()
                ? "no " + what
                : entries.size() + " " + what + ", " + days.get(0) + " to " + days.get(days.size() - 1);
    }

    /** The parameters with readings, in the order of the reference. */
    private Stream<Parameter> tested() {
        List<Parameter> found =
                readings.stream().map(Reading::parameter).distinct().toList();
        return reference.parameters().stream().filter(found::contains);
    }

    private static boolean comesWithFreshMix(Parameter parameter) {
        return parameter.kind() == Parameter.Kind.ION
                || parameter.id().equals("salinity")
                || parameter.id().equals("alkalinity");
    }

    private Map<String, String> target(Parameter parameter) {
        return Map.of(
                "Parameter",
                parameter.id(),
                SetupForms.IF_BLANK,
                reference
                        .findTarget(parameter)
                        .map(t -> number(t.low(), parameter) + " to " + number(t.high(), parameter) + " "
                                + reference.canonicalScale(parameter).label() + source(t.source()))
                        .orElse("not judged against a range"));
    }

    private String source(String key) {
        return reference.sources().stream()
                .filter(s -> s.key().equals(key))
                .findFirst()
                .map(s -> s.commonPractice() ? " (common practice, no source)" : " (" + s.citation() + ")")
                .orElse("");
    }

    private static String number(double value, Parameter parameter) {
        return String.format(Locale.ROOT, "%." + parameter.decimals() + "f", value);
    }

    /** One row an additive; the test it raises is filled in only where the name is that test's name. */
    private Stream<Map<String, String>> additives() {
        return grouped(doses, e -> additive(e).orElse("")).entrySet().stream().map(e -> {
            Map<String, String> cells = new LinkedHashMap<>();
            cells.put("Additive", e.getKey());
            sameName(e.getKey()).ifPresent(p -> cells.put("Parameter", p.id()));
            cells.put(SetupForms.FOUND, amount(e.getValue(), "dose entries"));
            return cells;
        });
    }

    private Optional<Parameter> sameName(String additive) {
        String folded = Names.fold(additive);
        return reference.aliases(Alias.Kind.PARAMETER).stream()
                .filter(a -> a.text().equals(folded))
                .flatMap(a -> reference.findParameter(a.means()).stream())
                .findFirst();
    }

    private Stream<Map<String, String>> kits() {
        return tested().flatMap(p -> readings.stream()
                .filter(r -> r.parameter().equals(p))
                .map(Reading::method)
                .distinct()
                .map(kit -> Map.of("Parameter", p.id(), "Kit", kit)));
    }

    private Stream<Map<String, String>> pumps() {
        return log.entries().stream().flatMap(SetupFilling::rate).distinct();
    }

    private static Stream<Map<String, String>> rate(LogEntry entry) {
        return entry.match(
                r -> Stream.empty(),
                (DoseRate d) -> d.additive().isBlank()
                        ? Stream.<Map<String, String>>empty()
                        : Stream.of(Map.of("Tank", d.tank(), "Additive", d.additive())),
                o -> Stream.empty(),
                w -> Stream.empty(),
                n -> Stream.empty());
    }

    private static Stream<Reading> reading(LogEntry entry) {
        return entry.match(
                Stream::of, d -> Stream.empty(), o -> Stream.empty(), w -> Stream.empty(), n -> Stream.empty());
    }

    private static Optional<String> additive(LogEntry entry) {
        return entry.match(
                r -> Optional.empty(),
                d -> Optional.of(d.additive()),
                (OneOffDose o) -> Optional.of(o.additive()),
                w -> Optional.empty(),
                n -> Optional.empty());
    }

    private static <T> Map<String, List<T>> grouped(List<T> all, Function<T, String> by) {
        return all.stream().collect(Collectors.groupingBy(by, LinkedHashMap::new, Collectors.toList()));
    }

    /** A column without a heading of its own cannot be told from others, one without entries needs no word. */
    private static boolean canBeNamed(ColumnReading column) {
        return column.cells() > 0
                && !column.header().isBlank()
                && column.header().length() <= LONGEST_HEADER;
    }

    /** How the column was read stands beside it; what the keeper writes is a correction and binds, a blank cell leaves the reading as it is. */
    private Map<String, String> column(BlockReading block, ColumnReading column) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("Sheet", block.sheet());
        cells.put("Block", block.region());
        cells.put("Header", column.header());
        cells.put(SetupForms.AS_READ, asRead(column));
        cells.put(SetupForms.HOW_SURE, howSure(column.sure()));
        cells.put(SetupForms.EXAMPLES, String.join(" \u00b7 ", column.samples()));
        return cells;
    }

    private static String asRead(ColumnReading column) {
        List<String> parts = new ArrayList<>();
        parts.add(column.meaning()
                + (column.unit().isBlank() ? "" : " in " + column.unit())
                + (column.tank().isBlank() ? "" : ", " + column.tank()));
        worked(column, Inferred.PARAMETER, "Meaning").ifPresent(parts::add);
        worked(column, Inferred.UNIT, "Unit").ifPresent(parts::add);
        worked(column, Inferred.TANK, "Tank").ifPresent(parts::add);
        parts.add(column.cells() + " cells");
        column.first().ifPresent(f -> parts.add(f + " to " + column.last().orElse(f)));
        return String.join("; ", parts);
    }

    private static Optional<String> worked(ColumnReading column, Inferred what, String header) {
        return column.inferred().contains(what) ? Optional.of(workedOut(header)) : Optional.empty();
    }

    /** How the text under As read says that a part was worked out; the tint of the blank cell looks for it. */
    static String workedOut(String header) {
        return header.toLowerCase(Locale.ROOT) + " worked out";
    }

    private static String howSure(double sure) {
        String words = sure >= 0.95 ? "sure" : sure >= 0.75 ? "fairly sure" : "please check";
        return words + " (" + Math.round(sure * 100) + " %)";
    }
}
