package soundings.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import soundings.sheet.Cell;
import soundings.sheet.Value;

/** Finds the lines of an area that head a table: known words side by side, no data among them. */
final class Headings {
    private final Words words;
    private final Area area;

    private Headings(Words words, Area area) {
        this.words = words;
        this.area = area;
    }

    /** The indices, in the area's lines, of every heading line. */
    static List<Integer> in(Area area, Words words) {
        Headings headings = new Headings(words, area);
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < area.lines().size(); i++) {
            if (headings.heads(i)) {
                found.add(i);
            }
        }
        return found;
    }

    private boolean heads(int index) {
        Line line = area.lines().get(index);
        if (!allText(line) || line.cells().stream().anyMatch(words::ditto)) {
            return false;
        }
        int distinct = distinctMeanings(line);
        return (distinct >= 2 && !holdsData(line))
                || HeadedDays.heads(line)
                || (distinct == 1 && (leadsDates(line, index) || leadsTests(line, index)))
                || (foremost(index) && !holdsData(line) && overData(line, index));
    }

    /** No line above holds data. */
    private boolean foremost(int index) {
        return area.lines().subList(0, index).stream().allMatch(l -> allText(l) && !holdsData(l));
    }

    /** Names that nobody knows, one over a column of dates or beside it, two at least over numbers. */
    private boolean overData(Line line, int index) {
        long numbers = line.cells().stream()
                .filter(c -> below(index, c.at().column(), Kind.NUMBER, 10))
                .count();
        return numbers >= 2
                && numbers * 2 >= line.cells().size()
                && area.lines().stream()
                        .skip(index + 1L)
                        .limit(2)
                        .allMatch(l -> l.cells().stream().anyMatch(c -> words.kind(c) == Kind.DATE));
    }

    /** A heading has no numbers and no dates; a year or a footnote among many labels does no harm. */
    private static boolean allText(Line line) {
        long other = line.cells().stream()
                .filter(c -> !(c.value() instanceof Value.Text))
                .count();
        return other == 0 || other * 6 <= line.cells().size();
    }

    private boolean holdsData(Line line) {
        long data = line.cells().stream().filter(c -> words.kind(c).data()).count();
        return data * 6 > line.cells().size() || line.cells().stream().anyMatch(c -> words.kind(c) == Kind.DATE);
    }

    /** How many different things the labels of a line name; units alone do not count. */
    private int distinctMeanings(Line line) {
        Set<String> meanings = new HashSet<>();
        for (Cell cell : line.cells()) {
            Label label = words.label(cell);
            if (label.known()) {
                meanings.add(label.role() + label.parameter().map(p -> p.id()).orElse(label.name()));
            }
        }
        return meanings.size();
    }

    /** A single known word heads a table when it says "date" and dates stand below it. */
    private boolean leadsDates(Line line, int index) {
        return line.cells().stream()
                .filter(c -> words.label(c).role().dates())
                .anyMatch(c -> datesBelow(index, c.at().column()));
    }

    /** The word for a test, with tests' names below it and names beside it: {@code Test, Lagoon, Pier}. */
    private boolean leadsTests(Line line, int index) {
        Cell first = line.cells().get(0);
        return line.cells().size() > 1
                && !holdsData(line)
                && words.label(first).role() == Role.TEST
                && area.lines().stream()
                        .skip(index + 1L)
                        .limit(2)
                        .flatMap(l -> l.at(first.at().column()).stream())
                        .anyMatch(c -> words.inCompany(c.shown()).parameter().isPresent());
    }

    private boolean datesBelow(int index, int column) {
        return below(index, column, Kind.DATE, 3);
    }

    private boolean below(int index, int column, Kind kind, int lines) {
        return area.lines().stream()
                .skip(index + 1L)
                .limit(lines)
                .flatMap(l -> l.at(column).stream())
                .anyMatch(c -> words.kind(c) == kind);
    }
}
