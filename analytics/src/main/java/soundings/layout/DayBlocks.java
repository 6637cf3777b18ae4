package soundings.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Region;
import soundings.sheet.Value;

/**
 * A sheet of days one below the other, each a line of its date and the lines under it: {@code 3 May}, {@code alk 8.2}, {@code 10% WC}. Its
 * lines get the day, and the tank where the block names one, put before them.
 */
final class DayBlocks {
    static final int DATE = 0;
    static final int TANK = 1;
    private static final int PREFIX = 2;
    private static final int FEWEST = 2;
    /** Of the lines under the days so many begin where the dates stand; in a table with a date column none do. */
    private static final double BEGIN = 0.5;
    /** For each day alone in its line so many may have something beside them. */
    private static final double ACCOMPANIED = 0.2;

    private final Area area;
    private final Words words;
    private final DayHeads heads;
    private final int lead;
    private final List<Optional<DayHeads.Head>> found;
    private final Map<CellRef, CellRef> places = new HashMap<>();
    private final Set<CellRef> said = new HashSet<>();

    private DayBlocks(Area area, Words words, Tanks tanks) {
        List<Integer> columns = area.usedColumns();
        this.area = area;
        this.words = words;
        this.lead = columns.get(0);
        this.heads = new DayHeads(words, tanks, columns.size() == 1);
        this.found = area.lines().stream()
                .map(l -> l.firstColumn() == lead ? heads.of(l) : Optional.<DayHeads.Head>empty())
                .toList();
    }

    /** The area with its days and tanks put before its lines; empty where its days do not stand so. */
    static Optional<Area> unfolded(Area area, Words words, Tanks tanks) {
        if (table(area)) {
            return Optional.empty();
        }
        DayBlocks blocks = new DayBlocks(area, words, tanks);
        return blocks.fit() ? Optional.of(blocks.unfold()) : Optional.empty();
    }

    /** Days with numbers beside most of them are a table's. */
    private static boolean table(Area area) {
        int days = 0;
        int rows = 0;
        for (Line line : area.lines()) {
            boolean day = line.cells().get(0).value() instanceof Value.Moment;
            days += day ? 1 : 0;
            rows += day && line.cells().stream().anyMatch(c -> c.value() instanceof Value.Numeric) ? 1 : 0;
        }
        return days >= FEWEST && rows > ACCOMPANIED * days;
    }

    /** The columns put before the others hold the days and the tanks. */
    static Shape settle(Shape shape) {
        boolean moved = shape.table().area().places() instanceof Places.Moved places && places.dated();
        return !moved || shape.grid()
                ? shape
                : shape.replace(f -> f.column() == DATE, f -> f.with(Label.of(Role.DATE, 1)))
                        .replace(f -> f.column() == TANK, f -> f.with(Label.of(Role.TANK, 1)));
    }

    private boolean fit() {
        List<DayHeads.Head> days = found.stream().flatMap(Optional::stream).toList();
        if (days.size() < FEWEST
                || days.stream().map(h -> h.date().shown()).distinct().count() < FEWEST) {
            return false;
        }
        int first = 0;
        while (found.get(first).isEmpty()) {
            first++;
        }
        int under = 0;
        int begin = 0;
        int accompanied = 0;
        for (int i = first; i < found.size(); i++) {
            Line line = area.lines().get(i);
            boolean leads = line.firstColumn() == lead;
            under += found.get(i).isEmpty() ? 1 : 0;
            begin += found.get(i).isEmpty() && leads ? 1 : 0;
            accompanied +=
                    found.get(i).isEmpty() && leads && heads.dated(line.cells().get(0)) ? 1 : 0;
            if (heads.week(line)) {
                return false;
            }
        }
        return under * 2 >= days.size() && begin >= BEGIN * under && accompanied <= ACCOMPANIED * days.size();
    }

    private Area unfold() {
        Map<Integer, Cell> tanks = tanks();
        Optional<DayHeads.Head> day = Optional.empty();
        Optional<Cell> tank = Optional.empty();
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            Optional<Cell> named = Optional.ofNullable(tanks.get(i));
            Optional<DayHeads.Head> head = found.get(i);
            day = head.isPresent() ? head : day;
            tank = named.isPresent() ? named : head.isPresent() && !introduced(i, tanks) ? Optional.empty() : tank;
            List<Cell> rest = rest(i, named);
            List<Cell> cells = new ArrayList<>();
            if (rest.isEmpty() ? nothingUnder(i) : !heading(rest) && !over(i, rest)) {
                int row = area.lines().get(i).row();
                day.ifPresent(d -> cells.add(put(d.date(), new CellRef(row, DATE))));
                tank.ifPresent(t -> cells.add(put(t, new CellRef(row, TANK))));
            }
            rest.forEach(c -> cells.add(moved(c)));
            if (!cells.isEmpty()) {
                lines.add(new Line(area.lines().get(i).row(), List.copyOf(cells)));
            }
        }
        List<Region> merges = area.merges().stream()
                .map(m -> new Region(moved(m.first()), moved(m.last())))
                .toList();
        return new Area(area.sheet(), Places.Moved.of(places, true), List.copyOf(lines), merges);
    }

    /** Whether a line right above a day names its tank. */
    private boolean introduced(int head, Map<Integer, Cell> tanks) {
        return head > 0 && tanks.containsKey(head - 1) && found.get(head - 1).isEmpty();
    }

    private boolean nothingUnder(int i) {
        return found.get(i).isPresent()
                && (i + 1 == found.size() || found.get(i + 1).isPresent());
    }

    /** What a line says beside its day and tank. */
    private List<Cell> rest(int i, Optional<Cell> tank) {
        List<Cell> cells = found.get(i)
                .map(DayHeads.Head::rest)
                .orElse(tank.isPresent() ? List.of() : area.lines().get(i).cells());
        return cells.stream().filter(c -> tank.filter(c::equals).isEmpty()).toList();
    }

    /** A note pinned to the day or tank is said once, on the first of its lines. */
    private Cell put(Cell cell, CellRef at) {
        places.put(at, area.place(cell));
        boolean first = said.add(cell.at());
        return new Cell(at, cell.value(), cell.look(), first ? cell.comment() : "");
    }

    private Cell moved(Cell cell) {
        places.put(moved(cell.at()), area.place(cell));
        return new Cell(moved(cell.at()), cell.value(), cell.look(), cell.comment());
    }

    private static CellRef moved(CellRef at) {
        return new CellRef(at.row(), at.column() + PREFIX);
    }

    /** Headings of the columns below them have no day. */
    private boolean heading(List<Cell> cells) {
        long labels = cells.stream().filter(c -> words.kind(c).label()).count();
        return cells.size() >= 2
                && labels * 2 >= cells.size()
                && cells.stream().noneMatch(c -> words.kind(c).data());
    }

    /** Words side by side over as many figures: {@code Test, Pier, Cove} over {@code KH, 8.2, 7.9}. */
    private boolean over(int i, List<Cell> cells) {
        if (i + 1 >= found.size() || found.get(i + 1).isPresent()) {
            return false;
        }
        Line below = area.lines().get(i + 1);
        long figures = cells.stream()
                .map(c -> c.at().column())
                .filter(c -> c > lead)
                .filter(c -> below.at(c).filter(d -> words.kind(d).data()).isPresent())
                .count();
        return figures >= 2
                && cells.stream().allMatch(this::wording)
                && below.at(lead).filter(c -> words.kind(c).label()).isPresent();
    }

    private boolean wording(Cell cell) {
        Kind kind = words.kind(cell);
        return kind == Kind.WORDS || kind.label();
    }

    /** By line: the tank it names, alone or with the day. */
    private Map<Integer, Cell> tanks() {
        Map<Integer, Cell> tanks = new HashMap<>();
        for (int i = 0; i < found.size(); i++) {
            Optional<Cell> named = found.get(i).flatMap(DayHeads.Head::tank).or(() -> Optional.empty());
            Optional<Cell> told =
                    found.get(i).isPresent() ? named : heads.tank(area.lines().get(i));
            int line = i;
            told.ifPresent(c -> tanks.put(line, c));
        }
        Map<Integer, Cell> bare = bare();
        return tanks.isEmpty() && !bare.isEmpty() ? bare : tanks;
    }

    /** Names without a word before them: the same few, beside, right above or right below nearly every day. */
    private Map<Integer, Cell> bare() {
        return Stream.of(0, -1, 1)
                .map(this::bare)
                .filter(m -> !m.isEmpty())
                .findFirst()
                .orElse(Map.of());
    }

    private Optional<Cell> beside(DayHeads.Head head) {
        return head.rest().size() == 1 && heads.mayName(head.rest().get(0))
                ? Optional.of(head.rest().get(0))
                : Optional.empty();
    }

    private Map<Integer, Cell> bare(int step) {
        Map<Integer, Cell> names = new HashMap<>();
        int days = 0;
        for (int i = 0; i < found.size(); i++) {
            int near = i + step;
            if (found.get(i).isEmpty()) {
                continue;
            }
            days++;
            if (step == 0) {
                found.get(i).flatMap(this::beside).ifPresent(c -> names.put(near, c));
            } else if (near >= 0 && near < found.size() && found.get(near).isEmpty()) {
                heads.name(area.lines().get(near)).ifPresent(c -> names.put(near, c));
            }
        }
        Set<String> different = new HashSet<>();
        names.values().forEach(c -> different.add(Names.fold(c.shown())));
        boolean recur = names.size() >= 0.8 * days && different.size() * 2 <= names.size();
        return recur ? names : Map.of();
    }
}
