package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.sheet.Cell;
import soundings.sheet.Value;

/** Lines among the rows that hold nothing but a tank's name: the rows below are that tank's, {@code Corner tank}. */
final class RowGroups {
    private RowGroups() {}

    /** For each row the tank that the nearest such line above names, or the line itself; empty where none does. */
    static List<Optional<String>> of(Shape shape, List<Row> rows, Context context) {
        boolean told =
                shape.all(Role.TANK).stream().anyMatch(f -> f.label().tank().isEmpty());
        List<Optional<String>> groups = new ArrayList<>();
        Optional<String> above = Optional.empty();
        for (Row row : rows) {
            Optional<String> named = told ? Optional.empty() : named(row, context);
            above = named.isPresent() ? named : above;
            groups.add(above);
        }
        return groups;
    }

    static boolean heads(Row row, Context context) {
        return named(row, context).isPresent();
    }

    private static Optional<String> named(Row row, Context context) {
        Cell only = row.line().cells().get(0);
        boolean alone = row.line().cells().size() == 1 && !row.own() && only.value() instanceof Value.Text;
        return !alone
                ? Optional.empty()
                : context.tanks()
                        .findNamed(only.shown())
                        .or(() -> new TankTitles(context.words()).name(List.of(row.line()), false))
                        .filter(n -> context.words().kind(only) != Kind.NOTHING);
    }
}
