package soundings.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import soundings.history.TankHistory;
import soundings.log.AsWritten;
import soundings.log.Remark;

/** What one cell says of a tank on a day besides tests, with the kinds of event that were found in it. */
record Note(LocalDate on, String text, Set<String> kinds, AsWritten at) {
    Note {
        kinds = Set.copyOf(kinds);
    }

    /** A tank's notes, oldest first; the remarks of one cell make one note. */
    static List<Note> of(TankHistory tank) {
        Map<List<Object>, List<Remark>> cells = new LinkedHashMap<>();
        tank.remarks()
                .forEach(r -> cells.computeIfAbsent(List.of(r.date(), r.at().place()), c -> new ArrayList<>())
                        .add(r));
        return cells.values().stream()
                .map(Note::joined)
                .sorted(java.util.Comparator.comparing(Note::on).thenComparing(n -> n.at().place()))
                .toList();
    }

    private static Note joined(List<Remark> remarks) {
        String whole = remarks.get(0).at().text();
        List<Remark> inOrder = remarks.stream()
                .sorted(java.util.Comparator.comparingInt((Remark r) -> whole.indexOf(r.text()))
                        .thenComparing(Remark::text))
                .toList();
        String text = inOrder.stream().map(Remark::text).collect(Collectors.joining("; "));
        Set<String> kinds = new TreeSet<>(inOrder.stream().map(Remark::kind).toList());
        return new Note(remarks.get(0).date(), text, kinds, remarks.get(0).at());
    }
}
