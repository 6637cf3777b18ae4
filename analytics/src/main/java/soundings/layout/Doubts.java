package soundings.layout;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.log.AmbiguousDates;
import soundings.log.AsWritten;
import soundings.log.DateFromTitle;
import soundings.log.DoubleFit;
import soundings.log.TanksAssumed;
import soundings.log.TanksFromHeadings;
import soundings.log.TanksUnclear;
import soundings.log.UnreadableDate;
import soundings.log.WaterUnclear;
import soundings.sheet.Cell;
import soundings.sheet.Region;

/** Says what about a whole table is in doubt: its dates, its tanks. */
final class Doubts {
    static final String SEVERAL = "more than one day stands here; of which it is, is not said";

    static final String TWO_WAYS = "it can be read in two ways";

    private final Context context;
    private final Shape shape;
    private final Area area;
    private final Ledger ledger;

    private Doubts(Context context, Shape shape, Ledger ledger) {
        this.context = context;
        this.shape = shape;
        this.area = shape.table().area();
        this.ledger = ledger;
    }

    static void of(Context context, Shape shape, Ledger ledger, List<Row> rows) {
        Doubts doubts = new Doubts(context, shape, ledger);
        doubts.twoWays(rows);
        doubts.ambiguous(rows);
        doubts.several(rows);
        doubts.tanksByName();
        doubts.tanksByHeading();
        doubts.titled(rows);
    }

    private void twoWays(List<Row> rows) {
        if (!shape.doubt().isEmpty() && !rows.isEmpty()) {
            List<Line> lines = rows.stream().map(Row::line).toList();
            Cell first = lines.get(0).cells().get(0);
            ledger.issue(new DoubleFit(area.written(first), area.around(lines), shape.doubt()));
        }
    }

    /** Where day and month cannot be told apart one issue says so for the whole table. */
    private void ambiguous(List<Row> rows) {
        List<Cell> dates = rows.stream()
                .filter(r -> r.own()
                        && !r.refused().isEmpty()
                        && context.orders().order().isEmpty())
                .flatMap(r ->
                        shape.findDate().or(shape::findDiary).stream().flatMap(f -> r.line().at(f.column()).stream()))
                .toList();
        if (!dates.isEmpty()) {
            List<Line> lines = rows.stream().map(Row::line).toList();
            ledger.issue(new AmbiguousDates(
                    area.written(dates.get(0)),
                    area.around(lines),
                    context.orders().because()));
        }
    }

    private void titled(List<Row> rows) {
        boolean titled = shape.titledDay().isPresent() && !shape.card() && !rows.isEmpty();
        rows.stream()
                .limit(titled ? 1 : 0)
                .forEach(r -> r.date()
                        .ifPresent(d -> ledger.issue(
                                new DateFromTitle(area.written(r.line().cells().get(0)), d))));
    }

    private void tanksByName() {
        shape.find(Role.TANK)
                .filter(RowTanks::byNames)
                .ifPresent(f -> ledger.issue(new TanksAssumed(first(f), around(f), heading(f), names(f), f.because())));
        shape.findUnclearTanks()
                .ifPresent(f -> ledger.issue(
                        new TanksUnclear(first(f), around(f), f.header(), names(f)),
                        area,
                        shape.column(f).cells()));
    }

    /** Tanks told apart by headings, or perhaps told apart. */
    private void tanksByHeading() {
        List<Field> named =
                headed(f -> f.role() != Role.TANK && !f.label().tank().isEmpty() && RowTanks.byNames(f));
        List<Field> open = headed(HeadedTanks::unclear);
        named.stream()
                .limit(1)
                .forEach(f -> ledger.issue(new TanksFromHeadings(
                        first(f), joined(named.stream().map(n -> RowTanks.headed(n, context))))));
        open.stream()
                .limit(1)
                .forEach(f -> ledger.issue(
                        new WaterUnclear(first(f), joined(open.stream().map(Doubts::heading)))));
    }

    private List<Field> headed(Predicate<Field> which) {
        return shape.fields().stream()
                .filter(which.and(f -> shape.column(f).size() > 0))
                .toList();
    }

    private static String joined(Stream<String> names) {
        return names.distinct().limit(6).collect(Collectors.joining(", "));
    }

    private AsWritten first(Field field) {
        return area.written(shape.column(field).cells().get(0));
    }

    private Region around(Field field) {
        return area.around(shape.column(field).cells().stream()
                .map(c -> new Line(c.at().row(), List.of(c)))
                .toList());
    }

    private static String heading(Field field) {
        return field.header().isEmpty() ? "(no heading)" : field.header();
    }

    private String names(Field field) {
        return shape.column(field).cells().stream()
                .map(c -> c.shown().strip())
                .distinct()
                .limit(6)
                .collect(Collectors.joining(", "));
    }

    private void several(List<Row> rows) {
        rows.stream()
                .filter(r ->
                        r.several() && r.own() && HeadedDays.in(shape.fields()).isEmpty())
                .forEach(r -> shape.findDate()
                        .flatMap(f -> r.line().at(f.column()))
                        .ifPresent(c -> ledger.issue(
                                new UnreadableDate(area.written(c), area.around(List.of(r.line())), SEVERAL))));
    }
}
