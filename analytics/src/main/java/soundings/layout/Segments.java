package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import soundings.chemistry.Names;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.DatesInText;

/** Cuts an area into its tables: a band of heading lines, the titles above it, the lines below it down to the next. */
final class Segments {
    private static final int MOST_BAND_LINES = 4;
    private static final int LONGEST_NAME = 30;
    private static final int MOST_TITLES = 8;

    private final Area area;
    private final Words words;
    private final List<Line> lines;
    private final int leftmost;

    private Segments(Area area, Words words) {
        this.area = area;
        this.words = words;
        this.lines = area.lines();
        this.leftmost = lines.stream().mapToInt(Line::firstColumn).min().orElse(0);
    }

    /** First and last index of a heading band's lines. */
    private record Band(int from, int to) {}

    static List<Table> of(Area area, Words words) {
        return new Segments(area, words).tables();
    }

    private List<Table> tables() {
        List<Band> bands = bands(Headings.in(area, words));
        if (bands.isEmpty()) {
            return List.of(headless());
        }
        List<Table> tables = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            int title = i == 0 ? 0 : firstTitle(bands.get(i - 1).to() + 1, band.from());
            int end = i + 1 < bands.size()
                    ? firstTitle(band.to() + 1, bands.get(i + 1).from())
                    : lines.size();
            add(tables, table(title, band, end));
            from = end;
        }
        return from == 0 ? List.of() : tables;
    }

    private Table table(int title, Band band, int end) {
        List<Line> heading = lines.subList(band.from(), band.to() + 1);
        return new Table(
                area,
                lines.subList(title, band.from()),
                heading.stream().filter(l -> !aims(l)).toList(),
                heading.stream().filter(this::aims).toList(),
                lines.subList(Math.min(end, band.to() + 1), end));
    }

    /** A band that repeats the one before, with nothing said between them, goes on with the same table. */
    private static void add(List<Table> tables, Table next) {
        Table last = tables.isEmpty() ? next : tables.get(tables.size() - 1);
        if (!tables.isEmpty() && next.titles().isEmpty() && heading(last).equals(heading(next))) {
            tables.set(tables.size() - 1, last.withBody(next.body(), next.band()));
        } else {
            tables.add(next);
        }
    }

    private static List<String> heading(Table table) {
        return table.band().stream()
                .flatMap(l -> l.cells().stream())
                .map(c -> c.at().column() + Names.fold(c.shown()))
                .toList();
    }

    private Table headless() {
        int first = 0;
        while (first < lines.size() && plainText(lines.get(first)) && !begins(lines.get(first))) {
            first++;
        }
        int start = first == lines.size() || first > MOST_TITLES ? 0 : first;
        return new Table(area, lines.subList(0, start), List.of(), List.of(), lines.subList(start, lines.size()));
    }

    /** Whether the rows begin with a line: it holds a day, begins with one, or is a month over its days. */
    private boolean begins(Line line) {
        Cell first = line.cells().get(0);
        return holds(line, Kind.DATE)
                || DatesInText.leading(first.shown()).isPresent()
                || line.cells().size() == 1 && words.monthNamed(first).isPresent()
                || line.cells().size() > 1 && DateColumn.day(first) > 0;
    }

    private List<Band> bands(List<Integer> headings) {
        List<Band> bands = new ArrayList<>();
        for (int heading : headings) {
            Band last = bands.isEmpty() ? new Band(-1, -1) : bands.get(bands.size() - 1);
            if (heading <= last.to()) {
                continue;
            }
            if (last.to() >= 0 && onlyAims(last.to(), heading)) {
                bands.set(bands.size() - 1, new Band(last.from(), bottom(heading)));
                continue;
            }
            bands.add(new Band(top(heading, last.to()), bottom(heading)));
        }
        return bands;
    }

    /** Whether two heading lines have lines of targets between them and nothing else. */
    private boolean onlyAims(int above, int below) {
        return below > above + 1
                && lines.get(below).row() - lines.get(above).row() == below - above
                && lines.subList(above + 1, below).stream().allMatch(this::aims);
    }

    private int top(int heading, int floor) {
        int top = heading;
        int seen = heading;
        while (seen - 1 > floor
                && adjacent(seen - 1, seen)
                && heading - seen < MOST_BAND_LINES
                && (labels(seen - 1, heading) || aims(lines.get(seen - 1)))) {
            seen--;
            top = aims(lines.get(seen)) ? top : seen;
        }
        return top;
    }

    /** A line of targets or usual values among the headings. */
    private boolean aims(Line line) {
        Cell first = line.cells().get(0);
        return line.cells().size() > 1
                && words.derived(first)
                && line.cells().stream().anyMatch(c -> words.kind(c).data());
    }

    /** Whether a line above a heading says something column by column, rather than entitling the whole. */
    private boolean labels(int index, int heading) {
        Line line = lines.get(index);
        return plainText(line)
                && !holdsData(line)
                && !tells(line, lines.get(heading))
                && (line.cells().size() > 1 || labels(line.cells().get(0), heading));
    }

    /** {@code Tank, Lagoon} over more headings than these two cells tells whose all is. */
    private boolean tells(Line line, Line heading) {
        return line.cells().size() == 2
                && heading.cells().size() > 2
                && line.firstColumn() == leftmost
                && words.label(line.cells().get(0)).role() == Role.TANK
                && words.kind(line.cells().get(1)) == Kind.WORDS;
    }

    /** A label that stands alone, over the dates, is of the whole table: {@code Nitrate (mg/L)} above dates and tanks. */
    private boolean labels(Cell only, int heading) {
        int row = lines.get(heading).row();
        boolean overDates = lines.stream()
                .skip(heading)
                .limit(MOST_BAND_LINES)
                .filter(l -> l.row() - row < MOST_BAND_LINES)
                .flatMap(l -> l.at(only.at().column()).stream())
                .findFirst()
                .filter(c -> words.label(c).role().dates())
                .isPresent();
        return words.kind(only) == Kind.LABEL && !overDates;
    }

    private int bottom(int heading) {
        int bottom = heading;
        while (bottom + 1 < lines.size()
                && adjacent(bottom, bottom + 1)
                && !namesTest(bottom + 1, heading)
                && (furtherLabels(bottom + 1) || continues(bottom + 1, heading))) {
            bottom++;
        }
        return bottom;
    }

    /** Whether a line holds nothing but a name under the word for a test: one that nothing was found for. */
    private boolean namesTest(int index, int heading) {
        Cell only = lines.get(index).cells().get(0);
        return lines.get(index).cells().size() == 1
                && lines.get(heading)
                        .at(only.at().column())
                        .filter(c -> words.label(c).role() == Role.TEST)
                        .isPresent();
    }

    /** Mostly units, a temperature such as {@code 25 °C} among them. */
    private boolean units(Line line) {
        long units =
                line.cells().stream().filter(c -> words.kind(c) == Kind.UNIT).count();
        return plainText(line)
                && !holds(line, Kind.DATE)
                && units >= 3
                && units * 2 >= line.cells().size();
    }

    private boolean furtherLabels(int index) {
        Line line = lines.get(index);
        if (units(line)) {
            return true;
        }
        long labels = line.cells().stream().filter(c -> words.kind(c).label()).count();
        return plainText(line)
                && !holdsData(line)
                && labels * 2 >= line.cells().size()
                && (labels >= 2 || holds(line, Kind.UNIT));
    }

    /** Names right below the headings and right above the data, the date in one of both lines: {@code morning}, {@code Lagoon}. */
    private boolean continues(int index, int heading) {
        Line line = lines.get(index);
        boolean names = line.cells().size() >= 2
                && plainText(line)
                && line.cells().stream().allMatch(c -> words.kind(c).label() || words.kind(c) == Kind.WORDS)
                && line.cells().stream().allMatch(c -> c.shown().length() <= LONGEST_NAME);
        boolean underDate = lines.get(heading).cells().stream()
                .filter(c -> words.label(c).role().dates())
                .anyMatch(c -> line.at(c.at().column()).isPresent());
        return names && !underDate && dated(heading) != dated(index) && datesBelow(index);
    }

    private boolean dated(int index) {
        return lines.get(index).cells().stream()
                .anyMatch(c -> words.label(c).role().dates());
    }

    /** Dates begin on the next line or the one after. */
    private boolean datesBelow(int index) {
        return lines.stream().skip(index + 1L).limit(2).anyMatch(l -> holds(l, Kind.DATE));
    }

    private boolean adjacent(int first, int second) {
        return lines.get(second).row() - lines.get(first).row() == 1;
    }

    /** The index from which the lines above a band are its titles; {@code band} itself when there are none. */
    private int firstTitle(int floor, int band) {
        int title = band;
        while (title > floor && entitles(title - 1)) {
            title--;
        }
        return title;
    }

    private boolean entitles(int index) {
        Line line = lines.get(index);
        return plainText(line) && line.cells().size() <= 2 && !holdsData(line) && line.firstColumn() <= leftmost + 1;
    }

    private boolean holdsData(Line line) {
        return line.cells().stream().anyMatch(c -> words.kind(c).data());
    }

    private boolean holds(Line line, Kind kind) {
        return line.cells().stream().anyMatch(c -> words.kind(c) == kind);
    }

    private static boolean plainText(Line line) {
        return line.cells().stream().map(Cell::value).allMatch(v -> v instanceof Value.Text);
    }
}
