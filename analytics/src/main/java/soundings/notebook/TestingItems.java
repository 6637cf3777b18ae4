package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.upkeep.Testing;

/** The testing itself: what is overdue, what is tested oftener than it need be, what it costs, kits near their last day. */
final class TestingItems {
    /** So many are named in a sentence; the table has the rest. */
    private static final int NAMED = 5;

    private TestingItems() {}

    private static Testing found(View view) {
        return view.findings().upkeep().testing();
    }

    /** The sentence to take away; empty where there is nothing to say. */
    static String finding(View view) {
        Testing testing = found(view);
        List<String> parts = new ArrayList<>();
        if (!testing.overdue().isEmpty()) {
            parts.add("Overdue: " + named(testing.overdue()));
        }
        if (!testing.oftenerThanNeeded().isEmpty()) {
            parts.add("Tested oftener than it need be: " + named(testing.oftenerThanNeeded()));
        }
        List<String> kits = testing.kits().stream()
                .filter(k -> k.isExpired() || k.isNear())
                .map(k -> Sentences.lower(k.parameter().name())
                        + (k.isExpired() ? " expired on " : " expires on ")
                        + Figures.day(k.expires()))
                .toList();
        if (!kits.isEmpty()) {
            parts.add("Kits: " + Figures.list(kits));
        }
        if (!testing.costs().isEmpty()) {
            parts.add("The month's tests cost " + Figures.number(testing.costOfMonth(), 2));
        }
        return parts.isEmpty() ? "" : String.join(". ", parts) + ".";
    }

    private static String named(List<Testing.Test> tests) {
        String some = tests.stream()
                .limit(NAMED)
                .map(t -> Sentences.lower(t.parameter().name()) + (t.tank().isEmpty() ? "" : " (" + t.tank() + ")"))
                .collect(Collectors.joining(", "));
        int more = tests.size() - NAMED;
        return more > 0 ? some + " and " + more + " more" : some;
    }

    static List<Item> testing(View view) {
        List<Item> items = new ArrayList<>();
        if (!finding(view).isEmpty()) {
            tests(view).ifPresent(items::add);
            costs(view).ifPresent(items::add);
        }
        return items;
    }

    private static Optional<Item> tests(View view) {
        List<Column> columns = List.of(
                Column.words("Test"),
                Column.words("Tank"),
                new Column("Last on", "", Kind.DATE, 0),
                new Column("Usually every", "d", Kind.NUMBER, 0),
                new Column("Overdue", "d", Kind.NUMBER, 0),
                new Column("Enough every", "d", Kind.NUMBER, 0),
                new Column("Wait before reading", "min", Kind.NUMBER, 0),
                Column.words("Cell"));
        List<Row> rows = found(view).tests().stream().map(TestingItems::row).toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new TableItem(
                        "tests-taken",
                        "Every test: when it was last taken, how often, and how often would do",
                        columns,
                        rows,
                        rows.size() > 12,
                        List.of()));
    }

    private static Row row(Testing.Test test) {
        return new Row(
                List.of(
                        Cell.words(test.parameter().name()),
                        Cell.words(test.tank()),
                        new Cell.Day(test.last()),
                        number(test.usualDays(), test.usualDays().orElse(0) % 1 == 0 ? 0 : 1),
                        test.isOverdue() ? new Cell.Number(test.overdueDays(), 0, "") : Cell.NOTHING,
                        test.enoughEvery()
                                .<Cell>map(d -> new Cell.Number(d, 0, ""))
                                .orElse(Cell.NOTHING),
                        number(test.waitMinutes(), 0),
                        Cell.words(test.at())),
                List.of());
    }

    private static Cell number(OptionalDouble value, int decimals) {
        return value.isPresent() ? new Cell.Number(value.getAsDouble(), decimals, "") : Cell.NOTHING;
    }

    private static Optional<Item> costs(View view) {
        List<Column> columns = List.of(
                Column.words("Test"),
                new Column("Taken this month", "", Kind.NUMBER, 0),
                new Column("Price a test", "", Kind.NUMBER, 2),
                new Column("Together", "", Kind.NUMBER, 2),
                Column.words("Cell"));
        List<Row> rows = found(view).costs().stream()
                .map(c -> new Row(
                        List.of(
                                Cell.words(c.parameter().name()),
                                new Cell.Number(c.tests(), 0, ""),
                                new Cell.Number(c.priceEach(), 2, ""),
                                new Cell.Number(c.sum(), 2, ""),
                                Cell.words(c.cell())),
                        List.of()))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new TableItem(
                        "testing-costs",
                        "What the month's tests cost, in the money of the prices given",
                        columns,
                        rows,
                        true,
                        List.of()));
    }
}
