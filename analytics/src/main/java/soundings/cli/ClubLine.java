package soundings.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import soundings.advice.Action;
import soundings.advice.Action.Urgency;
import soundings.findings.Findings;
import soundings.history.Point;
import soundings.log.Issue;

/**
 * All that is kept of one log of a club: a line for the mentor.
 *
 * @param now how many things are to be done at once, {@code soon} within the week
 * @param first the most pressing thing to do, empty where nothing presses
 * @param notUnderstood cells or parts of the log that could not be used
 * @param sinceTest days since the last test that was used
 * @param problem why there is no report; empty where there is one
 */
record ClubLine(
        String log,
        Optional<Path> page,
        Optional<YearMonth> month,
        int now,
        int soon,
        String first,
        int notUnderstood,
        OptionalLong sinceTest,
        String problem) {
    /** So many days without a test are worth a question; common practice, no source. */
    private static final long QUIET_DAYS = 14;

    /** Who needs a look first. */
    static final Comparator<ClubLine> FIRST_LOOK = Comparator.comparingInt(ClubLine::rank)
            .thenComparing(Comparator.comparingInt(ClubLine::now).reversed())
            .thenComparing(Comparator.comparingInt(ClubLine::soon).reversed())
            .thenComparing(
                    Comparator.comparingLong((ClubLine l) -> l.sinceTest().orElse(0))
                            .reversed())
            .thenComparing(Comparator.comparingInt(ClubLine::notUnderstood).reversed())
            .thenComparing(ClubLine::log);

    static ClubLine failed(Path log, String problem) {
        return new ClubLine(
                String.valueOf(log.getFileName()),
                Optional.empty(),
                Optional.empty(),
                0,
                0,
                "",
                0,
                OptionalLong.empty(),
                problem);
    }

    static ClubLine of(Path log, Path page, Findings findings, LocalDate today) {
        List<Action> actions = findings.advice().actions();
        return new ClubLine(
                String.valueOf(log.getFileName()),
                Optional.of(page),
                Optional.of(findings.month()),
                count(actions, Urgency.NOW),
                count(actions, Urgency.SOON),
                actions.stream()
                        .filter(a -> a.urgency() == Urgency.NOW || a.urgency() == Urgency.SOON)
                        .findFirst()
                        .map(a -> (a.tank().isEmpty() ? "" : a.tank() + ": ") + a.what())
                        .orElse(""),
                cellsAside(findings),
                lastTest(findings).stream()
                        .mapToLong(day -> Math.max(0, ChronoUnit.DAYS.between(day, today)))
                        .findFirst(),
                "");
    }

    private static int count(List<Action> actions, Urgency urgency) {
        return (int) actions.stream().filter(a -> a.urgency() == urgency).count();
    }

    private static int cellsAside(Findings findings) {
        return (int) findings.issues().stream()
                .filter(i -> i.severity() != Issue.Severity.NOTE)
                .count();
    }

    private static Optional<LocalDate> lastTest(Findings findings) {
        return findings.history().tanks().stream()
                .flatMap(t -> t.series().stream())
                .flatMap(s -> s.points().stream())
                .filter(Point::used)
                .map(p -> p.reading().date())
                .max(Comparator.naturalOrder());
    }

    private int rank() {
        return now > 0 ? 0 : !problem.isEmpty() ? 1 : soon > 0 ? 2 : isQuiet() ? 3 : notUnderstood > 0 ? 4 : 5;
    }

    private boolean isQuiet() {
        return sinceTest.orElse(0) > QUIET_DAYS;
    }

    /** Why it stands where it stands, the strongest reason first. */
    List<String> why() {
        List<String> why = new ArrayList<>();
        if (!problem.isEmpty()) {
            why.add("no report: " + problem);
        }
        if (now > 0) {
            why.add(now + " to do now");
        }
        if (soon > 0) {
            why.add(soon + " to do this week");
        }
        if (!first.isEmpty()) {
            why.add("first: " + first);
        }
        if (isQuiet()) {
            why.add("no test for " + sinceTest.getAsLong() + " days");
        }
        if (notUnderstood > 0) {
            why.add(notUnderstood + (notUnderstood == 1 ? " place" : " places") + " in the log not understood");
        }
        return why.isEmpty() ? List.of("nothing presses") : why;
    }

    boolean needsALook() {
        return rank() < 4;
    }
}
