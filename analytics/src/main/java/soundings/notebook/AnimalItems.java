package soundings.notebook;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.history.Note;
import soundings.log.Reading;
import soundings.log.Remark;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.upkeep.Animals;

/** Animals: losses with the water before them, moves, condition, feeding. */
final class AnimalItems {
    private static final int LOSSES_DAYS = 365;
    private static final int NOTES_DAYS = 92;
    /** A test further off tells little of that day; common practice, no source. */
    private static final int NEAR_DAYS = 7;

    private static final List<String> NUTRIENTS = List.of("nitrate", "phosphate");

    private AnimalItems() {}

    private static List<Animals> animals(View view) {
        return view.findings().upkeep().animals();
    }

    private static boolean within(View view, LocalDate day, int days) {
        return day.isAfter(view.asOf().minusDays(days));
    }

    /** The sentence to take away; empty where nothing is noted of animals in the last months. */
    static String finding(View view) {
        if (losses(view).isEmpty() && notes(view).isEmpty()) {
            return "";
        }
        List<Lost> month = lost(view)
                .filter(l -> YearMonth.from(l.on()).equals(view.findings().month()))
                .toList();
        String name = Figures.month(view.findings().month());
        if (month.isEmpty()) {
            return "No loss was noted in " + name + ".";
        }
        Lost last = month.get(month.size() - 1);
        return Figures.count(month.size(), "loss was noted in ", "losses were noted in ") + name + ". Before that of "
                + Figures.day(last.on()) + ": " + Text.clause(water(view, last.tank(), last.loss()))
                + ". What came before need not be the cause.";
    }

    /** A loss and the tank it was in. */
    private record Lost(String tank, Animals.Loss loss) {
        LocalDate on() {
            return loss.on();
        }
    }

    private static Stream<Lost> lost(View view) {
        return animals(view).stream().flatMap(a -> a.losses().stream().map(l -> new Lost(a.tank(), l)));
    }

    /** What the water did, the tests that stand out; that none does is an answer too. */
    static String water(View view, String tank, Animals.Loss loss) {
        if (loss.water().isEmpty()) {
            return "the water was not followed closely enough to tell what it did.";
        }
        List<String> out = loss.standingOut().stream()
                .map(s -> shift(view.scale(tank, s.parameter()), s))
                .toList();
        return out.isEmpty()
                ? "none of " + Figures.count(loss.water().size(), "test", "tests")
                        + " that could be followed moved or left its range."
                : String.join("; ", out) + ".";
    }

    private static String shift(Scale scale, Animals.Shift s) {
        int decimals = scale.decimalsAt(scale.written(s.last().mid()));
        String way = s.moved() ? (s.change() > 0 ? " rose from " : " fell from ") : " went from ";
        String name = Sentences.lower(s.parameter().name());
        String last = Figures.with(Figures.number(scale.written(s.last().mid()), decimals), scale.label());
        String outside = s.outside()
                ? ", outside its range (between " + Figures.number(scale.written(s.lowest()), decimals) + " and "
                        + Figures.number(scale.written(s.highest()), decimals) + ")"
                : "";
        return name + way + Figures.number(scale.written(s.first().mid()), decimals) + " to " + last + outside;
    }

    static List<Item> losses(View view) {
        List<Column> columns = List.of(
                Column.words("Noted"),
                Column.words("Tank"),
                new Column("Day", "", Kind.DATE, 0),
                Column.words("The water in the fortnight before"),
                Column.words("Noted in those days"),
                Column.words("Cell"));
        List<Row> rows = lost(view)
                .filter(l -> within(view, l.on(), LOSSES_DAYS))
                .map(l -> row(view, l))
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem("losses", "Losses of the last year", columns, rows, false, List.of()));
    }

    private static Row row(View view, Lost lost) {
        Animals.Loss loss = lost.loss();
        String before = loss.before().stream().map(Note::text).distinct().collect(Collectors.joining("; "));
        List<String> places = Stream.concat(Stream.of(loss.noted()), loss.again().stream())
                .map(n -> n.at().place())
                .toList();
        return new Row(
                List.of(
                        Cell.words(told(loss)),
                        Cell.words(lost.tank()),
                        new Cell.Day(lost.on()),
                        Cell.words(Figures.capital(water(view, lost.tank(), loss))),
                        Cell.words(before),
                        Cell.words(String.join(", ", places))),
                places);
    }

    private static String told(Animals.Loss loss) {
        return Stream.concat(
                        Stream.of(loss.noted().text()),
                        loss.again().stream().map(n -> "on " + Figures.day(n.on()) + ": " + n.text()))
                .collect(Collectors.joining("; "));
    }

    /** One note with what it tells of. */
    private record Noted(String tank, String of, Remark remark, String text) {}

    static List<Item> notes(View view) {
        List<Noted> noted = animals(view).stream()
                .flatMap(AnimalItems::all)
                .filter(n -> within(view, n.remark().date(), NOTES_DAYS))
                .sorted(Comparator.comparing(n -> n.remark().date()))
                .toList();
        List<Parameter> nutrients = noted.stream()
                .flatMap(n -> NUTRIENTS.stream()
                        .flatMap(id -> view.findings().reference().findParameter(id).stream())
                        .filter(p -> near(view, n, p).isPresent()))
                .distinct()
                .sorted(Comparator.comparing(p -> NUTRIENTS.indexOf(p.id())))
                .toList();
        List<Row> rows = noted.stream().map(n -> row(view, n, nutrients)).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(
                        CareBlocks.prose(CareBlocks.block(Prose.Kind.PARAGRAPH, said(noted, nutrients))),
                        new TableItem(
                                "animal-notes",
                                "Moves, condition and feeding, the last three months",
                                columns(nutrients),
                                rows,
                                rows.size() > 4,
                                List.of()));
    }

    private static List<Column> columns(List<Parameter> nutrients) {
        List<Column> columns = new ArrayList<>(List.of(
                new Column("Day", "", Kind.DATE, 0), Column.words("Tank"), Column.words("Of"), Column.words("Noted")));
        nutrients.forEach(p -> columns.add(Column.words(p.name() + " near it")));
        columns.add(Column.words("Cell"));
        return columns;
    }

    private static Row row(View view, Noted n, List<Parameter> nutrients) {
        List<Cell> cells = new ArrayList<>(List.of(
                new Cell.Day(n.remark().date()), Cell.words(n.tank()), Cell.words(n.of()), Cell.words(n.text())));
        nutrients.forEach(p -> cells.add(near(view, n, p)
                .<Cell>map(r ->
                        Cell.words(tested(view.scale(n.tank(), p), r, n.remark().date())))
                .orElse(Cell.NOTHING)));
        cells.add(Cell.words(n.remark().at().place()));
        return new Row(cells, List.of());
    }

    private static Optional<Reading> near(View view, Noted n, Parameter parameter) {
        return view.tank(n.tank())
                .findSeries(parameter)
                .flatMap(s -> s.near(n.remark().date(), NEAR_DAYS))
                .filter(r -> !r.date().isAfter(view.asOf()));
    }

    /** {@code 27.5 mg/L, 2 days before}. */
    private static String tested(Scale scale, Reading reading, LocalDate noted) {
        long after = ChronoUnit.DAYS.between(noted, reading.date());
        String off = Figures.count((int) Math.abs(after), "day", "days") + (after < 0 ? " before" : " after");
        return Figures.amount(scale, reading.amount()) + (after == 0 ? ", that day" : ", " + off);
    }

    /** How many notes of each kind, and the newest on how the animals are. */
    private static String said(List<Noted> noted, List<Parameter> nutrients) {
        List<String> counts = Stream.of("condition", "move", "feeding")
                .flatMap(of -> {
                    int many =
                            (int) noted.stream().filter(n -> n.of().equals(of)).count();
                    return many == 0 ? Stream.of() : Stream.of(many + " of " + (of.equals("move") ? "moves" : of));
                })
                .toList();
        String last = noted.stream()
                .filter(n -> n.of().equals("condition"))
                .reduce((a, b) -> b)
                .map(n -> " The newest on how the animals are: \u201c" + n.text() + "\u201d (" + n.tank() + ", "
                        + Figures.day(n.remark().date()) + ").")
                .orElse("");
        String beside = nutrients.isEmpty()
                ? ""
                : " Beside each note stands how much "
                        + Figures.list(nutrients.stream()
                                .map(p -> Sentences.lower(p.name()))
                                .toList())
                        + " the test nearest to it found, at most " + NEAR_DAYS
                        + " days off; that shows no cause of what was noted.";
        return "Noted in the last three months: " + Figures.list(counts) + "." + last + beside;
    }

    private static Stream<Noted> all(Animals a) {
        return Stream.of(
                        byCell(a.tank(), "move", a.moves()),
                        byCell(a.tank(), "condition", a.conditions()),
                        byCell(a.tank(), "feeding", a.feeding()))
                .flatMap(s -> s);
    }

    /** What one cell says of one thing is one note. */
    private static Stream<Noted> byCell(String tank, String of, List<Remark> remarks) {
        return Note.of(remarks).stream()
                .map(n -> new Noted(
                        tank,
                        of,
                        n.remarks().get(0),
                        n.remarks().stream().map(Remark::text).distinct().collect(Collectors.joining(", "))));
    }
}
