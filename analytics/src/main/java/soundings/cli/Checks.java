package soundings.cli;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.findings.Findings;
import soundings.log.Reading;

/** What must hold before a report makes sense. */
final class Checks {
    private Checks() {}

    /** @param asked the month asked for; a month without a test is refused */
    static void somethingToReport(Findings findings, Optional<YearMonth> asked, Path log) {
        SortedSet<YearMonth> tested = tested(findings);
        boolean unused = findings.history().tanks().stream()
                .allMatch(t -> t.series().stream().allMatch(x -> x.used().isEmpty()));
        if (tested.isEmpty() || (unused && asked.isEmpty())) {
            throw new CannotDo(log.getFileName() + ": no test result with a date was found in it; `inspect "
                    + log.getFileName() + "` shows how each sheet was read" + otherwise(log));
        }
        asked.filter(month -> !tested.contains(month)).ifPresent(month -> {
            throw new CannotDo(
                    log.getFileName() + ": nothing was tested in " + month + "; there are tests of " + inWords(tested));
        });
    }

    /** What a file that is no log may be, by its name. */
    static String otherwise(Path log) {
        return LogNames.isSetup(log)
                ? "; by its name it is the setup workbook of a log: name the log itself"
                : LogNames.isReport(log) ? "; by its name it is a report: name the log it was made of" : "";
    }

    private static SortedSet<YearMonth> tested(Findings findings) {
        return findings.log().entries().stream()
                .flatMap(e -> e.match(
                        Stream::of,
                        d -> Stream.empty(),
                        o -> Stream.empty(),
                        w -> Stream.empty(),
                        m -> Stream.<Reading>empty()))
                .filter(r -> r.refused().isEmpty())
                .map(r -> YearMonth.from(r.date()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** {@code 2025-11 to 2026-02, 2026-04}: months that follow one another are one span. */
    static String inWords(SortedSet<YearMonth> months) {
        List<List<YearMonth>> spans = new ArrayList<>();
        for (YearMonth month : months) {
            if (spans.isEmpty()
                    || !last(spans.get(spans.size() - 1)).plusMonths(1).equals(month)) {
                spans.add(new ArrayList<>());
            }
            spans.get(spans.size() - 1).add(month);
        }
        return spans.stream()
                .map(s -> s.size() == 1 ? "" + s.get(0) : s.get(0) + " to " + last(s))
                .collect(Collectors.joining(", "));
    }

    private static YearMonth last(List<YearMonth> span) {
        return span.get(span.size() - 1);
    }
}
