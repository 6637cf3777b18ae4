package soundings.notebook.table;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Scale;
import soundings.history.Point;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.notebook.Cell;
import soundings.notebook.Figures;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import tech.tablesaw.aggregate.AggregateFunctions;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** Means of a tank's readings, a row a month and a column a test. A reading below or above a limit has no part in a mean. */
public final class Months {
    private Months() {}

    /** The last {@code most} months up to {@code until}, newest first; empty while there are fewer than two. */
    public static Optional<TableItem> of(TankHistory tank, YearMonth until, int most, String tankId) {
        Table means = means(tank, until.minusMonths(most - 1L), until);
        if (means.rowCount() < 2) {
            return Optional.empty();
        }
        List<Series> series = tank.series().stream()
                .filter(s -> means.columnNames().contains(s.parameter().id()))
                .toList();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < means.rowCount(); i++) {
            rows.add(row(means, i, series));
        }
        rows.sort(Comparator.comparing(Months::month).reversed());
        return Optional.of(new TableItem(
                tankId + "-months", "Mean of each month's readings", columns(series), named(rows), true, List.of()));
    }

    private static Table means(TankHistory tank, YearMonth from, YearMonth until) {
        StringColumn months = StringColumn.create("month");
        StringColumn tests = StringColumn.create("test");
        DoubleColumn values = DoubleColumn.create("value");
        for (Series series :
                tank.series().stream().filter(s -> s.parameter().isOfTheWater()).toList()) {
            for (Point point : series.used()) {
                YearMonth month = YearMonth.from(point.reading().date());
                Optional<Double> exact = point.reading()
                        .amount()
                        .match(
                                e -> Optional.of(e.value()),
                                b -> Optional.empty(),
                                a -> Optional.empty(),
                                b -> Optional.empty());
                if (exact.isPresent() && !month.isBefore(from) && !month.isAfter(until)) {
                    months.append(month.toString());
                    tests.append(series.parameter().id());
                    values.append(series.scale().written(exact.get()));
                }
            }
        }
        return means(months, tests, values);
    }

    private static Table means(StringColumn months, StringColumn tests, DoubleColumn values) {
        Table readings = Table.create("readings", months, tests, values);
        return readings.isEmpty() ? readings : readings.pivot("month", "test", "value", AggregateFunctions.mean);
    }

    /** Loads what working out the means needs. */
    public static void prepare() {
        means(StringColumn.create("month", ""), StringColumn.create("test", ""), DoubleColumn.create("value", 0.0));
    }

    private static List<Column> columns(List<Series> series) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("Month")));
        for (Series one : series) {
            Scale scale = one.scale();
            columns.add(new Column(one.parameter().name(), scale.label(), Kind.NUMBER, scale.decimals()));
        }
        return columns;
    }

    private static Row row(Table means, int index, List<Series> series) {
        List<Cell> cells =
                new ArrayList<>(List.of(Cell.words(means.stringColumn("month").get(index))));
        for (Series one : series) {
            Double mean = means.doubleColumn(one.parameter().id()).get(index);
            cells.add(
                    mean == null || mean.isNaN()
                            ? Cell.NOTHING
                            : new Cell.Number(mean, one.scale().decimalsAt(mean), ""));
        }
        return new Row(cells, List.of());
    }

    private static String month(Row row) {
        return row.cells().get(0).match(Cell.Words::text, n -> "", r -> "", d -> "", s -> "");
    }

    private static List<Row> named(List<Row> rows) {
        return rows.stream()
                .map(row -> {
                    List<Cell> cells = new ArrayList<>(row.cells());
                    cells.set(0, Cell.words(Figures.month(YearMonth.parse(month(row)))));
                    return new Row(cells, row.restsOn());
                })
                .toList();
    }
}
