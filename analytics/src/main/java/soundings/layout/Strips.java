package soundings.layout;

import java.util.ArrayList;
import java.util.List;

/** Cuts a sheet at its blank columns, where what stands on both sides has dates of its own. */
final class Strips {
    private Strips() {}

    private record Span(int from, int to) {}

    static List<Area> of(Area area, Words words) {
        List<Span> spans = spans(area.usedColumns());
        if (spans.size() < 2) {
            return List.of(area);
        }
        List<Area> strips = new ArrayList<>();
        Span open = spans.get(0);
        boolean full = dated(area.columns(open.from(), open.to()), words);
        for (Span span : spans.subList(1, spans.size())) {
            boolean own = dated(area.columns(span.from(), span.to()), words);
            if (own && full) {
                strips.add(area.columns(open.from(), open.to()));
                open = span;
            } else {
                open = new Span(open.from(), span.to());
                full = full || own;
            }
        }
        strips.add(area.columns(open.from(), open.to()));
        return strips;
    }

    /** The parts of an area between its blank columns. */
    static List<Area> between(Area area) {
        return spans(area.usedColumns()).stream()
                .map(s -> area.columns(s.from(), s.to()))
                .toList();
    }

    private static List<Span> spans(List<Integer> columns) {
        List<Span> spans = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= columns.size(); i++) {
            if (i == columns.size() || columns.get(i) - columns.get(i - 1) > 1) {
                spans.add(new Span(columns.get(from), columns.get(i - 1)));
                from = i;
            }
        }
        return spans;
    }

    /** Whether a strip has a column of dates and something beside it. */
    private static boolean dated(Area strip, Words words) {
        boolean beside = strip.usedColumns().size() > 1;
        return beside
                && Column.of(strip.lines(), words).values().stream()
                        .anyMatch(c -> c.count(Kind.DATE) >= 2 && c.dated(false) >= 0.5);
    }
}
