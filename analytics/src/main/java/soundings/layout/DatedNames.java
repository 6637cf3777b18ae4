package soundings.layout;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Names;
import soundings.layout.Unfolding.Part;
import soundings.sheet.Cell;
import soundings.sheet.Value;

/** A first column whose cells hold the day and the tank together, {@code 3 May - Pier}, taken apart into two. */
final class DatedNames {
    private static final int FEWEST = 3;
    private static final double MOST = 0.6;

    private final Area area;
    private final int lead;
    private final Map<Integer, List<Cell>> parts = new HashMap<>();

    private DatedNames(Area area, int lead) {
        this.area = area;
        this.lead = lead;
    }

    /** The area with the names in a column of their own; empty where there are none. */
    static Optional<Area> unfolded(Area area, Words words, Tanks tanks) {
        List<Integer> columns = area.usedColumns();
        if (columns.size() < 2) {
            return Optional.empty();
        }
        DatedNames dated = new DatedNames(area, columns.get(0));
        return dated.texts() && dated.found(new DayHeads(words, tanks, true))
                ? Optional.of(dated.unfold())
                : Optional.empty();
    }

    /** A day that stands with a name is text. */
    private boolean texts() {
        return area.lines().stream()
                        .flatMap(l -> l.at(lead).stream())
                        .filter(c -> c.value() instanceof Value.Text)
                        .count()
                >= FEWEST;
    }

    private boolean found(DayHeads heads) {
        Set<String> names = new HashSet<>();
        int days = 0;
        int accompanied = 0;
        for (Line line : area.lines()) {
            Optional<DayHeads.Head> head = line.at(lead).flatMap(c -> heads.of(new Line(line.row(), List.of(c))));
            days += head.isPresent() ? 1 : 0;
            accompanied += head.isPresent() && line.cells().size() > 1 ? 1 : 0;
            head.flatMap(h -> h.tank()
                            .or(() -> h.rest().stream().filter(heads::mayName).findFirst()))
                    .ifPresent(name -> {
                        names.add(Names.fold(name.shown()));
                        parts.put(line.row(), List.of(head.get().date(), name));
                    });
        }
        return parts.size() >= FEWEST
                && accompanied * 2 >= days
                && parts.size() >= MOST * days
                && names.size() * 2 <= parts.size();
    }

    private Area unfold() {
        return Unfolding.of(area, this::column, true, this::parts);
    }

    private int column(int column) {
        return column == lead ? DayBlocks.DATE : column - lead + DayBlocks.TANK;
    }

    private List<Part> parts(Cell cell) {
        List<Cell> both =
                cell.at().column() == lead ? parts.getOrDefault(cell.at().row(), List.of()) : List.of();
        return both.isEmpty()
                ? List.of()
                : List.of(
                        new Part(DayBlocks.DATE, both.get(0).value()),
                        new Part(DayBlocks.TANK, both.get(1).value()));
    }
}
