package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import soundings.chemistry.Ions;
import soundings.chemistry.NaturalSeawater;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.chemistry.TraceFigure;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.quantity.Interval;

/** What the open sea holds of what was tested, beside the ranges: a comparison, never a target by itself. */
final class SeaItems {
    private static final String REFERENCE_COMPOSITION = "MFWM08";

    /** Copper in mg/L. */
    private static final int MOST_DECIMALS = 6;

    private SeaItems() {}

    static List<Item> sea(View view) {
        Reference reference = view.findings().reference();
        List<Row> rows = view.tests().stream()
                .map(View.Test::parameter)
                .distinct()
                .flatMap(p -> row(view.scale(p), reference).stream())
                .toList();
        List<Column> columns = List.of(
                Column.words("Test"),
                new Column("In the sea at salinity 35", "", Kind.INTERVAL, 2),
                Column.words("By whom"));
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "sea", "What the open sea holds of what was tested", columns, rows, true, List.of()));
    }

    private static Optional<Row> row(Scale scale, Reference reference) {
        Parameter parameter = scale.parameter();
        OptionalDouble steady = NaturalSeawater.level(parameter, Ions.STANDARD, reference);
        return steady.isPresent()
                ? Optional.of(row(
                        scale, exactly(steady.getAsDouble()), SourceItems.citation(reference, REFERENCE_COMPOSITION)))
                : NaturalSeawater.spread(parameter, Ions.STANDARD, reference)
                        .map(spread -> row(scale, spread, compilations(parameter, reference)));
    }

    private static Interval exactly(double value) {
        return new Interval(value, value, value);
    }

    private static Row row(Scale scale, Interval canonical, String whose) {
        Interval value = scale.written(canonical);
        int decimals = Figures.decimals(value, MOST_DECIMALS);
        String unit = Figures.unit(scale.label());
        List<Cell> cells = new ArrayList<>(List.of(Cell.words(scale.parameter().name())));
        cells.add(
                value.high() > value.low()
                        ? new Cell.Range(value, decimals, unit)
                        : new Cell.Number(value.mid(), WorkingItems.decimals(value.mid()), unit));
        cells.add(Cell.words(whose));
        return new Row(cells, List.of());
    }

    /** Each compilation by its source; where several disagree, that is said by the range. */
    private static String compilations(Parameter parameter, Reference reference) {
        List<TraceFigure> figures = NaturalSeawater.figures(parameter, reference);
        String all = figures.stream()
                .map(f -> SourceItems.citation(reference, f.source()))
                .distinct()
                .collect(Collectors.joining("; "));
        return figures.size() > 1 ? "from the lowest to the highest of: " + all : all;
    }
}
