package soundings.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soundings.log.Inferred;
import soundings.sheet.Cell;

/** Which tank each row of a table speaks of: the one written in it, the one above where a group names it once, or the table's. */
final class RowTanks {
    private final Optional<Field> field;
    private final Context context;
    private final String fallback;
    private final boolean sparse;

    private RowTanks(Optional<Field> field, Context context, String fallback, boolean sparse) {
        this.field = field;
        this.context = context;
        this.fallback = fallback;
        this.sparse = sparse;
    }

    static RowTanks of(Shape shape, Context context, String fallback) {
        Optional<Field> field = shape.findTank();
        int filled = field.map(f -> shape.column(f).size()).orElse(0);
        return new RowTanks(
                field, context, fallback, filled * 10 < shape.table().body().size() * 8);
    }

    List<String> of(List<Row> rows, List<Optional<String>> derived) {
        List<String> tanks = new ArrayList<>();
        String above = "";
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            Optional<Cell> own = cell(row.line());
            boolean sameDay = i > 0 && row.date().equals(rows.get(i - 1).date());
            String tank = own.map(c -> name(c)).orElse(sparse || (sameDay && !row.own()) ? above : "");
            above = own.isPresent() && derived.get(i).isEmpty() ? tank : above;
            tanks.add(field.isEmpty() ? fallback : tank);
        }
        return tanks;
    }

    /** The cells whose name was taken for another by a letter or sign, the first of each spelling. */
    List<Cell> merged(Shape shape) {
        Set<String> seen = new HashSet<>();
        return field.stream()
                .flatMap(f -> shape.column(f).cells().stream())
                .filter(c -> context.tanks().findNamed(c.shown()).isEmpty()
                        && context.tanks().findKnown(c.shown()).isPresent())
                .filter(c -> seen.add(c.shown().strip()))
                .toList();
    }

    private Optional<Cell> cell(Line line) {
        return field.flatMap(f -> line.at(f.column())).filter(c -> !c.shown().isBlank());
    }

    String name(Cell cell) {
        String text = cell.shown().strip();
        return context.tanks().findKnown(text).orElse(text);
    }

    /** Whether the column was taken for the tanks' because of its values alone. */
    boolean byNames() {
        return field.filter(RowTanks::byNames).isPresent();
    }

    static String headed(Field field, Context context) {
        String headed = field.label().tank();
        return headed.isEmpty() ? headed : context.tanks().findKnown(headed).orElse(headed);
    }

    static boolean byNames(Field field) {
        return field.inferred().contains(Inferred.TANK);
    }

    /** Whether the row's tank is not written in it although others are. */
    boolean carried(Line line) {
        return field.isPresent() && cell(line).isEmpty();
    }
}
