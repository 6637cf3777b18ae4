package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.layout.Unfolding.Part;
import soundings.sheet.Cell;
import soundings.sheet.Value;

/** A text table that was opened without being taken apart: each line one cell, {@code 2026-05-03;8.2;420}. */
final class JoinedFields {
    private static final List<String> SEPARATORS = List.of(";", "\t", "|", ",");
    private static final int FEWEST_LINES = 3;
    private static final double MOST = 0.8;
    /** The headings stand within so many lines of the top. */
    private static final int TOP = 6;

    private final Words words;
    private final Pattern field;

    private JoinedFields(Words words, String separator) {
        this.words = words;
        String sign = Pattern.quote(separator);
        this.field = Pattern.compile(
                "\\G(?:^|" + sign + ")(?:\"((?:[^\"]|\"\")*)\"|((?:(?!" + sign + ").)*))", Pattern.DOTALL);
    }

    /** The area with a column a field; as it is where it is no such table. */
    static Area apart(Area area, Words words) {
        boolean single = area.lines().size() > FEWEST_LINES
                && area.lines().stream().allMatch(l -> l.cells().size() == 1)
                && area.usedColumns().size() == 1;
        return single
                ? SEPARATORS.stream()
                        .flatMap(s -> new JoinedFields(words, s).fitting(area).stream())
                        .findFirst()
                        .orElse(area)
                : area;
    }

    private Optional<Area> fitting(Area area) {
        List<List<String>> rows =
                area.lines().stream().map(l -> fields(l.cells().get(0))).toList();
        int head = IntStream.range(0, Math.min(TOP, rows.size()))
                .filter(i -> headings(rows.get(i)))
                .findFirst()
                .orElse(-1);
        if (head < 0) {
            return Optional.empty();
        }
        int size = rows.get(head).size();
        int lead = area.usedColumns().get(0);
        long alike = rows.stream().skip(head + 1L).filter(r -> r.size() == size).count();
        return alike >= FEWEST_LINES && alike >= MOST * (rows.size() - head - 1)
                ? Optional.of(Unfolding.of(area, c -> c - lead, false, c -> parts(fields(c), size)))
                : Optional.empty();
    }

    private boolean headings(List<String> fields) {
        return fields.size() >= 2
                && fields.stream().noneMatch(f -> words.kind(f).data())
                && fields.stream().filter(f -> words.label(f).known()).count() >= 2;
    }

    private static List<Part> parts(List<String> fields, int size) {
        return fields.size() < size - 1
                ? List.of()
                : IntStream.range(0, fields.size())
                        .filter(i -> !fields.get(i).isBlank())
                        .mapToObj(i -> Part.text(i, fields.get(i).strip()))
                        .toList();
    }

    private List<String> fields(Cell cell) {
        return cell.value() instanceof Value.Text text ? fields(text.text()) : List.of();
    }

    private List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        Matcher next = field.matcher(line);
        while (next.find() && fields.size() <= line.length()) {
            fields.add(Stream.of(
                            Optional.ofNullable(next.group(1)).map(q -> q.replace("\"\"", "\"")),
                            Optional.ofNullable(next.group(2)))
                    .flatMap(Optional::stream)
                    .findFirst()
                    .orElse(""));
        }
        return fields;
    }
}
