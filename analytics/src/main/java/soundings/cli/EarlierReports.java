package soundings.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soundings.findings.MentorNotes;
import soundings.sheet.Book;
import soundings.workbook.UnreadableWorkbook;
import soundings.workbook.WorkbookReader;
import soundings.xlsx.Kept;
import soundings.xlsx.ReportAnswers;

/**
 * The reports that stand where new ones are written, for what people wrote into them.
 *
 * @param notebook which one's report is to be written
 */
record EarlierReports(Path folder, String stem, String notebook, Console console) {
    /** A year's: what was said before is no news any more. */
    private static final int MOST = 12;

    /** The report's name without its ending; that of the usual notebook needs no word of its own. */
    String name(YearMonth month) {
        return stem + " report " + month + NotebookFiles.mark(notebook);
    }

    /** What was written into the reports before a month, or into all there are. */
    SortedMap<YearMonth, MentorNotes> notes(Optional<YearMonth> before) {
        TreeMap<YearMonth, List<Path>> files = new TreeMap<>();
        for (Path file : beside()) {
            month(file)
                    .filter(m -> before.map(m::isBefore).orElse(true))
                    .ifPresent(m ->
                            files.computeIfAbsent(m, any -> new ArrayList<>()).add(file));
        }
        TreeMap<YearMonth, MentorNotes> notes = new TreeMap<>();
        files.descendingMap().entrySet().stream()
                .limit(MOST)
                .parallel()
                .map(e -> new java.util.AbstractMap.SimpleEntry<>(
                        e.getKey(),
                        MentorNotes.all(e.getValue().stream().map(this::written).toList())))
                .sequential()
                .forEach(e -> notes.put(e.getKey(), e.getValue()));
        return notes;
    }

    private List<Path> beside() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** The month of a report of this log, whatever its notebook. */
    private Optional<YearMonth> month(Path file) {
        Matcher name = Pattern.compile(Pattern.quote(stem) + " report (\\d{4}-(?:0[1-9]|1[0-2]))(?: .+)?\\.xlsx")
                .matcher(String.valueOf(file.getFileName()));
        return name.matches() ? Optional.of(YearMonth.parse(name.group(1))) : Optional.empty();
    }

    private MentorNotes written(Path file) {
        try {
            return ReportAnswers.read(WorkbookReader.read(file, Optional.empty()), String.valueOf(file.getFileName()));
        } catch (UnreadableWorkbook e) {
            console.notice("what was written into an earlier report is left out: " + e.getMessage());
            return MentorNotes.NONE;
        }
    }

    /** What people wrote into the report to be written anew; empty where one stands there that can't be read. */
    Optional<Kept> kept(YearMonth month) {
        String file = name(month) + ".xlsx";
        Set<String> names = Set.of(file, Outputs.secondName(file));
        try {
            List<Book> books = beside().stream()
                    .filter(f -> names.contains(String.valueOf(f.getFileName())))
                    .map(f -> WorkbookReader.read(f, Optional.empty()))
                    .toList();
            return Optional.of(Kept.of(books));
        } catch (UnreadableWorkbook e) {
            console.notice(
                    "the report that stands there is left alone, for what may be written in it: " + e.getMessage());
            return Optional.empty();
        }
    }
}
