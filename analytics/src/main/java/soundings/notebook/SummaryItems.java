package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.advice.Judgement;
import soundings.advice.Verdict;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.estimate.Estimate;
import soundings.history.Point;
import soundings.log.AsWritten;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.quantity.Interval;

/** Every tank and test on one page. */
final class SummaryItems {
    private static final int SPARK_POINTS = 40;

    /** Nobody plans more tests than this for one verdict. */
    private static final int MANY_TESTS = 8;

    private SummaryItems() {}

    static List<Item> summary(View view) {
        return table(
                view,
                view.tests(),
                "summary-table",
                "Every tank and test; the small figures hold the true one 9 times in 10");
    }

    static List<Item> kind(View view, String kind) {
        Parameter.Kind wanted = java.util.Arrays.stream(Parameter.Kind.values())
                .filter(k -> k.name().equalsIgnoreCase(kind))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "no kind '" + kind + "'; there are ion, trace, nutrient, toxin, condition"));
        List<View.Test> tests = view.tests().stream()
                .filter(test -> test.parameter().kind() == wanted)
                .toList();
        String id = "summary-" + wanted.name().toLowerCase(java.util.Locale.ROOT);
        return tests.isEmpty()
                ? List.of()
                : table(view, tests, id, "The small figures hold the true one 9 times in 10");
    }

    private static List<Item> table(View view, List<View.Test> tests, String id, String caption) {
        List<Column> columns = List.of(
                Column.words("Tank"),
                Column.words("Test"),
                Column.words("Verdict"),
                new Column("Level", "", Kind.INTERVAL, 1),
                new Column("Use a day", "", Kind.INTERVAL, 2),
                new Column("Drift in 30 days, water changes apart", "", Kind.INTERVAL, 2),
                Column.words("Range"),
                new Column("Last readings", "", Kind.SPARK, 1),
                Column.words("How sure"));
        List<Row> rows = tests.stream().map(test -> row(view, test, id)).toList();
        return List.of(new TableItem(id, caption, columns, rows, false, List.of()));
    }

    private static Row row(View view, View.Test test, String table) {
        Parameter parameter = test.parameter();
        String id = view.testId(test.tankName(), parameter);
        Optional<Estimate> estimate = view.estimate(test.tankName(), parameter);
        Optional<Judgement> judgement = view.judgement(test.tankName(), parameter);
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell.Words(View.name(test.tank()), Tone.PLAIN, view.tankId(test.tankName())));
        cells.add(new Cell.Words(parameter.name(), Tone.PLAIN, id));
        cells.add(judgement
                .<Cell>map(j -> new Cell.Words(j.verdict().words(), view.tone(j), id))
                .orElse(Cell.words(estimate.isPresent() ? "" : "too little")));
        Optional<Estimate> shown = estimate.filter(e -> !isByLastReading(parameter));
        Scale scale = test.scale();
        cells.add(shown.map(e -> range(scale.written(e.level()), scale)).orElse(last(test)));
        cells.add(shown.filter(e -> parameter.balances())
                .flatMap(e -> View.use(e).map(u -> scale.change(u, e.level().mid())))
                .map(u -> use(u, scale))
                .orElse(Cell.NOTHING));
        cells.add(shown.map(e -> range(scale.change(e.driftOver(30), e.level().mid()), scale))
                .orElse(Cell.NOTHING));
        cells.add(view.target(test.tankName(), parameter)
                .map(t -> Cell.words(Figures.bounds(scale, t.low(), t.high())))
                .orElse(Cell.NOTHING));
        cells.add(spark(view, test, table));
        cells.add(judgement.map(SummaryItems::sure).orElse(Cell.NOTHING));
        return new Row(cells, Places.gathered(places(test)));
    }

    /** Of a poison the last test is what counts, whatever level the tests before it make likely. */
    private static boolean isByLastReading(Parameter parameter) {
        return parameter.kind() == Parameter.Kind.TOXIN;
    }

    /** What is not told has no certainty, but what it needs to be told. */
    private static Cell sure(Judgement judgement) {
        return judgement.verdict() != Verdict.CANNOT_TELL
                ? Cell.words(Figures.sureShort(judgement.probability()))
                : Cell.words(judgement
                        .testsNeeded()
                        .map(t -> t.tests() > MANY_TESTS
                                ? "not within " + MANY_TESTS + " tests"
                                : "after " + Figures.count(t.tests(), "more test", "more tests"))
                        .orElse(""));
    }

    /** What comes in otherwise than by a dose is a gain, and is called so. */
    private static Cell use(Interval use, Scale scale) {
        int decimals = Figures.decimals(use, scale.decimals() + 1);
        boolean shows = Math.abs(use.mid()) >= 0.5 * Math.pow(10, -decimals);
        return use.mid() < 0 && shows
                ? new Cell.Range(use.times(-1), decimals, Figures.unit(scale.label()) + " gained")
                : new Cell.Range(use, decimals, scale.label());
    }

    static List<AsWritten> places(View.Test test) {
        return test.series().used().stream().map(p -> p.reading().at()).toList();
    }

    private static Cell range(Interval written, Scale scale) {
        return new Cell.Range(written, Figures.decimals(written, scale.decimals()), scale.label());
    }

    private static Cell last(View.Test test) {
        List<Point> used = test.series().used();
        return used.isEmpty()
                ? Cell.NOTHING
                : Cell.words("last "
                        + Figures.amount(
                                test.scale(),
                                used.get(used.size() - 1).reading().amount()));
    }

    private static Cell spark(View view, View.Test test, String table) {
        List<Point> used = test.series().used();
        List<ChartSpec.At> points = used.subList(Math.max(0, used.size() - SPARK_POINTS), used.size()).stream()
                .map(p -> new ChartSpec.At(
                        p.reading().date(),
                        test.scale().written(p.reading().amount().about())))
                .toList();
        if (points.size() < 2) {
            return Cell.NOTHING;
        }
        Parameter parameter = test.parameter();
        Scale scale = test.scale();
        int decimals = scale.decimalsAt(points.get(points.size() - 1).value());
        return new Cell.Spark(new ChartSpec.SparkLine(
                table + "-spark-" + view.testId(test.tankName(), parameter),
                parameter.name(),
                "The last " + points.size() + " readings, from "
                        + Figures.number(points.get(0).value(), decimals) + " to "
                        + Figures.number(points.get(points.size() - 1).value(), decimals),
                scale.label(),
                decimals,
                points,
                view.target(test.tankName(), parameter)
                        .map(t -> new ChartSpec.Within(scale.written(t.low()), scale.written(t.high())))));
    }
}
