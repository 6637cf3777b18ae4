package soundings.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import soundings.log.AsWritten;
import soundings.log.Remark;

/**
 * What one cell says of a tank on a day besides tests, doses and water changes.
 *
 * @param remarks its pieces in the order they are written, at least one
 */
public record Note(List<Remark> remarks) {
    public Note {
        remarks = List.copyOf(remarks);
    }

    /** A tank's notes, oldest first; the remarks of one cell make one note. */
    public static List<Note> of(TankHistory tank) {
        return of(tank.remarks());
    }

    public static List<Note> of(List<Remark> remarks) {
        Map<List<Object>, List<Remark>> cells = new LinkedHashMap<>();
        remarks.forEach(r -> cells.computeIfAbsent(List.of(r.date(), r.at().place()), c -> new ArrayList<>())
                .add(r));
        return cells.values().stream()
                .map(Note::inOrder)
                .sorted(Comparator.comparing(Note::on).thenComparing(n -> n.at().place()))
                .toList();
    }

    private static Note inOrder(List<Remark> remarks) {
        String whole = remarks.get(0).at().text();
        return new Note(remarks.stream()
                .sorted(Comparator.comparingInt((Remark r) -> whole.indexOf(r.text()))
                        .thenComparing(Remark::text))
                .toList());
    }

    public LocalDate on() {
        return remarks.get(0).date();
    }

    public AsWritten at() {
        return remarks.get(0).at();
    }

    public String text() {
        return remarks.stream().map(Remark::text).distinct().collect(Collectors.joining("; "));
    }

    /** The kinds of event found in it. */
    public Set<String> kinds() {
        return new TreeSet<>(remarks.stream().map(Remark::kind).toList());
    }

    /** The piece that holds these words of it; the first where none does. */
    public Remark holding(String words) {
        return remarks.stream()
                .filter(r -> r.text().contains(words))
                .findFirst()
                .orElse(remarks.get(0));
    }
}
