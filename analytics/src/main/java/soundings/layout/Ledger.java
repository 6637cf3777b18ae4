package soundings.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import soundings.log.AsWritten;
import soundings.log.Issue;
import soundings.log.LogEntry;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;

/** Keeps the books of one sheet: what each cell became. A cell nobody claimed shows at the end. */
final class Ledger {
    private final List<LogEntry> entries = new ArrayList<>();
    private final List<AsWritten> labels = new ArrayList<>();
    private final List<Issue> issues = new ArrayList<>();
    private final Set<CellRef> claimed = new HashSet<>();

    void entry(LogEntry entry) {
        entries.add(entry);
        claimed.add(entry.at().cell());
    }

    void label(Area area, Cell cell) {
        AsWritten written = area.written(cell);
        if (claimed.add(written.cell())) {
            labels.add(written);
        }
    }

    void labels(Area area, List<Line> lines) {
        lines.forEach(line -> line.cells().forEach(cell -> label(area, cell)));
    }

    void issue(Issue issue) {
        issues.add(issue);
        issue.where().ifPresent(w -> claimed.add(w.cell()));
    }

    /** An issue that accounts for these cells; its own {@code covers} holds them. */
    void issue(Issue issue, Area area, List<Cell> cells) {
        issue(issue);
        cells.forEach(c -> claimed.add(area.place(c)));
    }

    boolean claimed(Area area, Cell cell) {
        return claimed.contains(area.place(cell));
    }

    List<LogEntry> entries() {
        return entries;
    }

    List<AsWritten> labels() {
        return labels;
    }

    List<Issue> issues() {
        return issues;
    }
}
