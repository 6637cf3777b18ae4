package soundings.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soundings.sheet.Cell;
import soundings.sheet.Value;

/**
 * Lines among the rows that hold nothing but a tank's name: the rows below are that tank's, {@code Corner tank}.
 *
 * @param tanks for each row the tank that the nearest such line above names, or the line itself; empty where none does
 * @param heads the rows that are such lines
 */
record RowGroups(List<Optional<String>> tanks, Set<Integer> heads) {

    static RowGroups of(Shape shape, List<Row> rows, Context context) {
        boolean told = shape.findTank().isPresent();
        TankTitles titles = new TankTitles(context.words());
        List<Optional<String>> tanks = new ArrayList<>();
        Set<Integer> heads = new HashSet<>();
        Optional<String> above = Optional.empty();
        for (int i = 0; i < rows.size(); i++) {
            Optional<String> named = told ? Optional.empty() : named(rows.get(i), titles, context);
            if (named.isPresent()) {
                above = named;
                heads.add(i);
            }
            tanks.add(above);
        }
        return new RowGroups(tanks, heads);
    }

    private static Optional<String> named(Row row, TankTitles titles, Context context) {
        Cell only = row.line().cells().get(0);
        boolean alone = row.line().cells().size() == 1 && !row.own() && only.value() instanceof Value.Text;
        return !alone || context.words().kind(only) == Kind.NOTHING
                ? Optional.empty()
                : context.tanks().findNamed(only.shown()).or(() -> titles.name(List.of(row.line()), false));
    }
}
