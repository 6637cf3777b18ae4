package soundings.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soundings.layout.Unfolding.Part;
import soundings.sheet.Cell;
import soundings.sheet.Value;

/** A text table that was opened without being taken apart: each line one cell, {@code 2026-05-03;8.2;420}. */
final class JoinedFields {
    private static final List<String> SEPARATORS = List.of(";", "\t", "|", ",");
    private static final int FEWEST_LINES = 3;
    private static final double MOST = 0.8;

    private final Words words;
    private final Pattern field;

    private JoinedFields(Words words, String separator) {
        this.words = words;
        String sign = Pattern.quote(separator);
        this.field = Pattern.compile(
                "\\G(?:^|" + sign + ")(?:\"((?:[^\"]|\"\")*)\"|((?:(?!" + sign + ").)*))", Pattern.DOTALL);
    }

    /** The area with a column a field, where lines stand so; as it is where none do. */
    static Area apart(Area area, Words words) {
        if (area.lines().stream().noneMatch(l -> l.cells().size() == 1)) {
            return area;
        }
        Area apart = area;
        for (String separator : SEPARATORS) {
            apart = new JoinedFields(words, separator).fitting(apart).orElse(apart);
        }
        return apart;
    }

    /** Runs of lines, each a heading and the lines below it that hold as many fields. */
    private Optional<Area> fitting(Area area) {
        int lead = area.usedColumns().get(0);
        List<Optional<List<String>>> rows = area.lines().stream()
                .map(l -> l.cells().size() == 1 && l.firstColumn() == lead
                        ? Optional.of(fields(l.cells().get(0)))
                        : Optional.<List<String>>empty())
                .toList();
        Map<Integer, List<String>> joined = new HashMap<>();
        for (int head = 0; head < rows.size(); head++) {
            int to = rows.get(head).filter(this::headings).isPresent() ? end(rows, head) : head;
            for (int i = head; i < to; i++) {
                joined.put(area.lines().get(i).row(), rows.get(i).get());
            }
            head = Math.max(head, to - 1);
        }
        return joined.isEmpty()
                ? Optional.empty()
                : Optional.of(Unfolding.of(
                        area, c -> c - lead, false, c -> Part.of(joined.getOrDefault(c.at().row(), List.of()))));
    }

    /** One past the last line that goes on with a heading; the heading's own index where hardly any does. */
    private static int end(List<Optional<List<String>>> rows, int head) {
        int size = rows.get(head).get().size();
        int alike = 0;
        int to = head + 1;
        while (to < rows.size()
                && rows.get(to).isPresent()
                && rows.get(to).get().size() > 1) {
            alike += rows.get(to).get().size() == size ? 1 : 0;
            to++;
        }
        return alike >= FEWEST_LINES && alike >= MOST * (to - head - 1) ? to : head;
    }

    private boolean headings(List<String> fields) {
        return fields.size() >= 2
                && fields.stream().noneMatch(f -> words.kind(f).data())
                && fields.stream().filter(f -> words.label(f).known()).count() >= 2;
    }

    private List<String> fields(Cell cell) {
        return cell.value() instanceof Value.Text text ? fields(text.text()) : List.of();
    }

    private List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        Matcher next = field.matcher(line);
        while (next.find() && fields.size() <= line.length()) {
            String quoted = next.group(1);
            fields.add(quoted == null ? next.group(2) : quoted.replace("\"\"", "\""));
        }
        return fields;
    }
}
