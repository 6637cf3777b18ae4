package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Value;

/** Finds the tables of a sheet in whichever direction they make sense, each with its columns settled. */
final class Shapes {
    /** Two directions whose shares of cells with a place differ by less fit about as well. */
    private static final double ALIKE = 0.1;
    /** Two months of days and their headings. */
    private static final int MOST_OF_A_GRID = 70;
    /** Dates that head columns stand within so many lines of the top. */
    private static final int TOP = 5;

    private static final String TURNED =
            "the dates that run down, or the dates that run across, are the days of the results";

    private final Words words;
    private final Tanks tanks;
    private final Corrections corrections;

    Shapes(Words words, Tanks tanks, Corrections corrections) {
        this.words = words;
        this.tanks = tanks;
        this.corrections = corrections;
    }

    /** @param sense the share of cells that found a place, 0 to 1 */
    record Found(List<Shape> shapes, double sense) {}

    /** The tables of a sheet; a year that stands above one holds for those below it. */
    List<Shape> of(Grid grid) {
        List<Shape> shapes = new ArrayList<>();
        OptionalInt year = OptionalInt.empty();
        for (Shape shape : tables(grid)) {
            year = shape.topic().year().isPresent() ? shape.topic().year() : year;
            shapes.add(shape.topic().year().isPresent() || year.isEmpty() ? shape : shape.inYear(year));
        }
        return List.copyOf(shapes);
    }

    private List<Shape> tables(Grid grid) {
        if (grid.cells().isEmpty()) {
            return List.of();
        }
        Area written = JoinedColumns.apart(JoinedFields.apart(Area.of(grid), words), words);
        Area area = DatedNames.unfolded(written, words, tanks).orElse(written);
        List<Area> parts = Strips.between(area);
        List<Table> cards = inEach(parts, area, a -> Cards.of(a, words));
        if (!cards.isEmpty()) {
            return cards.stream().map(this::card).toList();
        }
        List<Shape> grids = grids(area);
        if (!grids.isEmpty()) {
            return grids.stream().map(this::settled).toList();
        }
        List<Area> days = inEach(
                parts, area, a -> DayBlocks.unfolded(a, words, tanks).stream().toList());
        if (!days.isEmpty()) {
            return days.stream()
                    .flatMap(d -> found(d, List.of()).shapes().stream())
                    .toList();
        }
        Found upright = found(area, List.of());
        if (upright.sense() >= 0.6 && !datesBothWays(area, upright)) {
            return upright.shapes();
        }
        List<Line> head = head(area);
        Area below = new Area(
                area.sheet(),
                area.places(),
                area.lines().subList(head.size(), area.lines().size()),
                area.merges());
        Found turned = found(below.turn(), head);
        boolean alike = Math.abs(turned.sense() - upright.sense()) < ALIKE && datesBothWays(area, upright);
        boolean stray = turned.shapes().stream().anyMatch(Shape::straysDates);
        return alike || stray && turned.sense() > upright.sense()
                ? upright.shapes().stream().map(s -> s.doubted(TURNED)).toList()
                : turned.sense() > upright.sense() ? turned.shapes() : upright.shapes();
    }

    /** What is found in every one of several parts side by side, else what is found in the whole. */
    private static <T> List<T> inEach(List<Area> parts, Area whole, Function<Area, List<T>> find) {
        List<List<T>> each = parts.size() < 2
                ? List.of()
                : parts.stream().map(find).takeWhile(f -> !f.isEmpty()).toList();
        return parts.size() > 1 && each.size() == parts.size()
                ? each.stream().flatMap(List::stream).toList()
                : find.apply(whole);
    }

    /** A week's or a year's days may stand down as well as across. */
    private List<Shape> grids(Area area) {
        List<Shape> across = DayGrids.of(area, words);
        boolean down = across.isEmpty() && area.lines().size() <= MOST_OF_A_GRID;
        return down
                ? DayGrids.of(area.turn(), words).stream()
                        .filter(s -> s.topic().month().isEmpty())
                        .toList()
                : across;
    }

    /** Whether dates stand side by side above results that have dates beside them already. */
    private boolean datesBothWays(Area area, Found upright) {
        boolean down = upright.shapes().stream()
                .anyMatch(s -> s.findDate().isPresent() && (s.has(Role.READING) || s.has(Role.RESULT)));
        return down
                && area.lines().stream()
                        .limit(TOP)
                        .anyMatch(l -> l.cells().stream()
                                        .filter(c -> words.kind(c) == Kind.DATE)
                                        .count()
                                >= 3);
    }

    /** The lines on top that hold a single text: titles, in whichever direction the table below them runs. */
    private List<Line> head(Area area) {
        int size = 0;
        while (size < area.lines().size() - 1 && title(area.lines().get(size))) {
            size++;
        }
        return area.lines().subList(0, size);
    }

    private boolean title(Line line) {
        Cell only = line.cells().get(0);
        return line.cells().size() == 1 && only.value() instanceof Value.Text && words.kind(only) == Kind.WORDS;
    }

    /** @param head titles of every table of a turned area, in the sheet's own direction */
    private Found found(Area area, List<Line> head) {
        List<Line> titles = head.stream()
                .flatMap(l -> l.cells().stream())
                .map(Area::turn)
                .map(c -> new Line(c.at().row(), List.of(c)))
                .toList();
        List<Shape> shapes = new ArrayList<>();
        for (Area strip : Strips.of(area, words)) {
            List<Line> over = area.turned() ? over(strip) : List.of();
            List<Line> all = new ArrayList<>(over.isEmpty() ? titles : ofNoTank(titles));
            all.addAll(over);
            int from = strip.usedColumns().get(over.size());
            List<Table> tables = Segments.of(over.isEmpty() ? strip : strip.columns(from, Integer.MAX_VALUE), words);
            for (Table table : tables) {
                shapes.addAll(shapes(beside(table.entitled(all), shapes)));
            }
        }
        int cells = shapes.stream().mapToInt(Shapes::cells).sum();
        int placed = shapes.stream().mapToInt(Shapes::placed).sum();
        return new Found(shapes, cells == 0 ? 0 : placed / (double) cells);
    }

    /** Titles for all, without those of the tank that the first part is about. */
    private List<Line> ofNoTank(List<Line> titles) {
        TankTitles tanks = new TankTitles(words);
        return titles.stream()
                .filter(l -> tanks.name(List.of(l), true).isEmpty())
                .toList();
    }

    /** A table without a name of its own, beside the first of the sheet, has what stands above both. */
    private Table beside(Table table, List<Shape> before) {
        boolean may = !before.isEmpty()
                && !table.lines().isEmpty()
                && !before.get(0).table().band().isEmpty()
                && !table.area().turned()
                && table.lines().get(0).row()
                        <= before.get(0).table().band().get(0).row();
        return may ? named(table, before.get(0).table().titles()) : table;
    }

    /** A table that names no tank gets the other titles: all where it has none, else those above its own. */
    private Table named(Table table, List<Line> others) {
        if (new TankTitles(words).name(table.titles(), true).isPresent()) {
            return table;
        }
        return table.entitled(
                table.titles().isEmpty()
                        ? others
                        : others.stream()
                                .filter(t -> t.row() < table.titles().get(0).row())
                                .toList());
    }

    /** In a turned area the lines over the dates are columns of a single text before them. */
    private List<Line> over(Area strip) {
        List<Integer> columns = strip.usedColumns();
        List<Line> over = new ArrayList<>();
        for (int column : columns.subList(0, columns.size() - 1)) {
            List<Cell> cells =
                    strip.lines().stream().flatMap(l -> l.at(column).stream()).toList();
            boolean title = cells.size() == 1
                    && cells.get(0).value() instanceof Value.Text
                    && !words.label(cells.get(0)).role().dates();
            if (!title) {
                return over;
            }
            over.add(new Line(cells.get(0).at().row(), cells));
        }
        return List.of();
    }

    private List<Shape> shapes(Table table) {
        Shape whole = shape(table);
        List<Integer> starts = whole.fields().stream()
                .filter(f -> f.role() == Role.DATE
                        && whole.column(f).dated(whole.topic().daysCount()) >= 0.5)
                .map(Field::column)
                .toList();
        return starts.size() < 2 || !parts(whole, starts) ? List.of(settled(whole)) : split(table, starts);
    }

    /** Each date column leads columns of its own. */
    private static boolean parts(Shape whole, List<Integer> starts) {
        for (int i = 0; i < starts.size(); i++) {
            int from = starts.get(i);
            int to = i + 1 < starts.size() ? starts.get(i + 1) : Integer.MAX_VALUE;
            boolean leads = whole.fields().stream()
                    .anyMatch(f ->
                            f.column() > from && f.column() < to && f.role().gives() && f.role() != Role.NOTE);
            if (!leads) {
                return false;
            }
        }
        return true;
    }

    private List<Shape> split(Table table, List<Integer> starts) {
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            int from = i == 0 ? 0 : starts.get(i);
            int to = i + 1 < starts.size() ? starts.get(i + 1) - 1 : Integer.MAX_VALUE;
            Table part = entitled(table.columns(from, to));
            Table whole = i == 0 ? part : named(part, shapes.get(0).table().titles());
            shapes.add(settled(shape(whole)));
        }
        return shapes;
    }

    /** A single name over all columns of a part is its title. */
    private Table entitled(Table part) {
        boolean name = part.band().size() > 1
                && part.band().get(0).cells().size() == 1
                && words.kind(part.band().get(0).cells().get(0)) != Kind.UNIT;
        if (!name) {
            return part;
        }
        List<Line> titles = new ArrayList<>(part.titles());
        titles.add(part.band().get(0));
        return new Table(part.area(), titles, part.band().subList(1, part.band().size()), part.repeats(), part.body());
    }

    private Shape shape(Table table) {
        return new Shape(
                table, Topic.of(table, words), Fields.of(table, words, tanks), Column.of(table.body(), words), "");
    }

    private Shape card(Table table) {
        Shape card = new Shape(
                table, Topic.of(table, words), Cards.fields(table, words), Column.of(table.body(), words), "");
        return corrections.apply(card);
    }

    private Shape settled(Shape shape) {
        Shape dated = DayBlocks.settle(shape);
        Shape roles = GroupNames.settle(WorkedOut.settle(Roles.settle(dated, words, tanks)), words);
        return corrections.apply(HeadedNotes.settle(HeadedTanks.settle(roles, words), words));
    }

    private static int cells(Shape shape) {
        return shape.table().body().stream().mapToInt(l -> l.cells().size()).sum();
    }

    private static int placed(Shape shape) {
        if (!shape.dated() || shape.fields().stream().noneMatch(f -> f.role().gives())) {
            return 0;
        }
        return shape.fields().stream()
                .filter(f -> f.role() != Role.UNKNOWN && f.role() != Role.IGNORED)
                .mapToInt(f -> shape.column(f).size())
                .sum();
    }
}
