package soundings.notebook;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Scale;
import soundings.history.Note;
import soundings.log.Remark;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.upkeep.Animals;

/** Animals: losses with the water before them, moves, condition, feeding. */
final class AnimalItems {
    private static final int LOSSES_DAYS = 365;
    private static final int NOTES_DAYS = 92;

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
        List<Column> columns = List.of(
                new Column("Day", "", Kind.DATE, 0),
                Column.words("Tank"),
                Column.words("Of"),
                Column.words("Noted"),
                Column.words("Cell"));
        List<Noted> noted = animals(view).stream()
                .flatMap(AnimalItems::all)
                .filter(n -> within(view, n.remark().date(), NOTES_DAYS))
                .sorted(Comparator.comparing(n -> n.remark().date()))
                .toList();
        List<Row> rows = noted.stream().map(AnimalItems::row).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(
                        CareBlocks.prose(CareBlocks.block(Prose.Kind.PARAGRAPH, said(noted))),
                        new TableItem(
                                "animal-notes",
                                "Moves, condition and feeding, the last three months",
                                columns,
                                rows,
                                rows.size() > 4,
                                List.of()));
    }

    private static Row row(Noted n) {
        return new Row(
                List.of(
                        new Cell.Day(n.remark().date()),
                        Cell.words(n.tank()),
                        Cell.words(n.of()),
                        Cell.words(n.text()),
                        Cell.words(n.remark().at().place())),
                List.of());
    }

    /** How many notes of each kind, and the newest on how the animals are. */
    private static String said(List<Noted> noted) {
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
        return "Noted in the last three months: " + Figures.list(counts) + "." + last;
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
        return remarks.stream()
                .collect(Collectors.groupingBy(r -> r.at().place(), LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(same -> new Noted(
                        tank,
                        of,
                        same.get(0),
                        same.stream().map(Remark::text).distinct().collect(Collectors.joining(", "))));
    }
}
