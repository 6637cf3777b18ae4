package soundings.log;

import java.util.List;

/**
 * A workbook understood.
 *
 * <p>Every non-empty cell of the book is accounted for: by an entry, as a label (header, title, unit row, date, tank
 * name, units), or by an issue.
 */
public record Log(
        List<String> tanks,
        List<LogEntry> entries,
        List<BlockReading> blocks,
        List<AsWritten> labels,
        List<Issue> issues) {
    public Log {
        tanks = List.copyOf(tanks);
        entries = List.copyOf(entries);
        blocks = List.copyOf(blocks);
        labels = List.copyOf(labels);
        issues = List.copyOf(issues);
    }

    /** Whether this was no log at all: nothing dated was found, or only what any text with a number may look like. */
    public boolean saysNothing() {
        boolean unsure =
                blocks.stream().allMatch(b -> b.sure() < 0.5 || b.layout().equals("no log"));
        return entries.isEmpty() || (unsure && entries.stream().noneMatch(Reading.class::isInstance));
    }
}
