package soundings.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import soundings.sheet.Cell;

/**
 * Finds grids of days: weekdays side by side with the week told beside, above or below them, and years of days by months. Empty where
 * a sheet holds none, or where the days of its cells cannot be told.
 */
final class DayGrids {
    /** So many of a grid's cells must find their day. */
    private static final double DATED = 0.9;

    private final Area area;
    private final Words words;
    private final TankTitles titles;

    private DayGrids(Area area, Words words) {
        this.area = area;
        this.words = words;
        this.titles = new TankTitles(words);
    }

    static List<Shape> of(Area area, Words words) {
        return new DayGrids(area, words).shapes();
    }

    /** A grid's heading line with what stands above and below it. */
    record Block(List<Line> above, Line head, Optional<Line> dates, List<Line> lines, GridDays days) {}

    private List<Shape> shapes() {
        List<Block> blocks = blocks();
        int cells = 0;
        int dated = 0;
        for (Block block : blocks) {
            for (Line line : block.lines()) {
                for (int column : block.days().columns()) {
                    boolean filled = line.at(column).isPresent();
                    cells += filled ? 1 : 0;
                    dated += filled && block.days().of(line, column).isPresent() ? 1 : 0;
                }
            }
        }
        return dated > 0 && dated >= DATED * cells ? shapes(blocks) : List.of();
    }

    private List<Block> blocks() {
        List<Integer> heads = new ArrayList<>();
        for (int i = 0; i < area.lines().size(); i++) {
            if (GridDays.heads(area.lines().get(i), words)) {
                heads.add(i);
            }
        }
        List<Block> blocks = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < heads.size(); i++) {
            int head = heads.get(i);
            int next = i + 1 < heads.size() ? heads.get(i + 1) : area.lines().size();
            int end = i + 1 < heads.size() ? firstAbove(head + 1, next) : next;
            blocks.add(
                    block(area.lines().subList(from, head), head, area.lines().subList(head + 1, end)));
            from = end;
        }
        return blocks;
    }

    private Block block(List<Line> above, int at, List<Line> below) {
        Line head = area.lines().get(at);
        Optional<Line> under = below.isEmpty() ? Optional.empty() : Optional.of(below.get(0));
        Optional<Line> over = above.isEmpty() ? Optional.empty() : Optional.of(above.get(above.size() - 1));
        Optional<Line> dates = under.filter(l -> GridDays.dates(l, head, words))
                .or(() -> over.filter(l -> GridDays.dates(l, head, words)));
        List<Line> texts = Stream.concat(
                        above.stream().filter(l -> dates.filter(l::equals).isEmpty()), corner(head).stream())
                .toList();
        List<Line> lines =
                below.stream().filter(l -> dates.filter(l::equals).isEmpty()).toList();
        return new Block(texts, head, dates, lines, GridDays.of(area.sheet(), texts, head, dates, lines, words));
    }

    /** A name in the corner of a grid is its title: {@code Lagoon | 1 | 2 | 3}. */
    private Optional<Line> corner(Line head) {
        Cell first = head.cells().get(0);
        boolean named =
                words.kind(first) == Kind.WORDS && titles.nameLike(first.shown()) && !titles.general(first.shown());
        return named ? Optional.of(new Line(head.row(), List.of(first))) : Optional.empty();
    }

    /** The index from which the lines above a head are its titles, or its dates. */
    private int firstAbove(int floor, int head) {
        int first = head;
        while (first > floor
                && above(area.lines().get(first - 1), area.lines().get(head))
                && !goesOn(first - 1, floor)) {
            first--;
        }
        return first;
    }

    /** Whether a line names a test under others that do: one that nothing was found for. */
    private boolean goesOn(int index, int floor) {
        return index > floor && test(index) && test(index - 1);
    }

    private boolean test(int index) {
        String first = area.lines().get(index).cells().get(0).shown();
        return words.inCompany(first).parameter().isPresent();
    }

    private boolean above(Line line, Line head) {
        boolean title = line.cells().size() <= 2
                && line.cells().stream().noneMatch(c -> words.kind(c) == Kind.NUMBER)
                && words.inCompany(line.cells().get(0).shown()).role() != Role.NOTE;
        boolean alone = line.cells().size() == 1 || words.kind(line.cells().get(0)) == Kind.DATE;
        return title && alone || GridDays.dates(line, head, words);
    }

    private List<Shape> shapes(List<Block> blocks) {
        List<Shape> shapes = new ArrayList<>();
        String before = "";
        List<Block> together = new ArrayList<>();
        for (Block block : blocks) {
            String about = about(block);
            if (!about.equals(before) && !together.isEmpty()) {
                shapes.add(shape(together));
                together.clear();
            }
            before = about;
            together.add(block);
        }
        shapes.add(shape(together));
        return shapes;
    }

    /** Blocks that are about the same test and tank, and laid out alike, belong together. */
    private String about(Block block) {
        String test = block.above().stream()
                .flatMap(l -> l.cells().stream())
                .flatMap(c -> words.label(c).parameter().stream())
                .map(p -> p.id())
                .findFirst()
                .orElse("");
        return test + "|" + titles.name(block.above(), true).orElse("") + "|"
                + block.days().columns() + block.days().before();
    }

    private Shape shape(List<Block> blocks) {
        Block first = blocks.get(0);
        DayGrid grid = new DayGrid(area, first.days().columns(), first.days().before());
        first.above().forEach(grid::title);
        blocks.stream().skip(1).flatMap(b -> b.above().stream()).forEach(grid::head);
        blocks.forEach(b -> lay(b, grid));
        return grid.shape(labels(first), words);
    }

    private static void lay(Block block, DayGrid grid) {
        grid.head(block.head());
        block.dates().ifPresent(grid::head);
        for (Line line : block.lines()) {
            block.days().told(line).ifPresent(grid::head);
            block.days()
                    .untold(line)
                    .ifPresent(rest -> grid.line(rest, c -> block.days().of(line, c)));
        }
    }

    private Map<Integer, Label> labels(Block block) {
        Map<Integer, Label> labels = new HashMap<>();
        for (int column : block.days().before()) {
            block.head()
                    .at(column)
                    .map(words::label)
                    .filter(l -> !l.role().dates() && l.role() != Role.READING)
                    .ifPresent(l -> labels.put(column, l));
        }
        return labels;
    }
}
