package soundings.findings;

import java.time.YearMonth;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soundings.advice.Advice;
import soundings.advice.Followed;
import soundings.care.Care;
import soundings.care.Challenge;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.history.History;
import soundings.log.AsWritten;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.upkeep.Upkeep;

/**
 * One run's findings, stage by stage, for one month.
 *
 * @param followed what became of the advice of the month before
 */
public record Findings(
        Provenance provenance,
        YearMonth month,
        Reference reference,
        Log log,
        History history,
        Estimates estimates,
        Advice advice,
        Care care,
        Upkeep upkeep,
        List<Followed> followed,
        Mentor mentor) {
    private static final Pattern LIGHT = Pattern.compile("(?i)\\b(?:par|ppfd)\\b");

    public Findings {
        followed = List.copyOf(followed);
    }

    public Findings(
            Provenance provenance,
            YearMonth month,
            Reference reference,
            Log log,
            History history,
            Estimates estimates,
            Advice advice) {
        this(
                provenance,
                month,
                reference,
                log,
                history,
                estimates,
                advice,
                Care.NONE,
                Upkeep.NOTHING,
                List.of(),
                Mentor.NONE);
    }

    /** Everything that could not be read or used as it stands, each once, stage by stage. */
    public List<Issue> issues() {
        Predicate<String> challenge = Challenge.words(reference);
        return Stream.of(history.setup().issues(), log.issues(), history.issues(), care.issues(), upkeep.issues())
                .flatMap(List::stream)
                .filter(i -> !isDoseOfCourse(i) && !isLight(i))
                .filter(i -> !i.kind().equals("unreadText")
                        || !challenge.test(i.where().map(AsWritten::text).orElse("")))
                .distinct()
                .toList();
    }

    /** Words that no rule of the log's reading explains and that a course of treatment counts as a dose. */
    private boolean isDoseOfCourse(Issue issue) {
        String place = issue.where().map(AsWritten::place).orElse("");
        return issue.kind().equals("unreadText")
                && care.courses().stream()
                        .flatMap(c -> c.doses().stream())
                        .anyMatch(g -> !g.assumed()
                                && g.place().equals(place)
                                && issue.message().contains(g.written()));
    }

    /** Words of light that no rule of the log's reading explains and that give a reading of a place. */
    private boolean isLight(Issue issue) {
        String place = issue.where().map(AsWritten::place).orElse("");
        return issue.kind().equals("unreadText")
                && LIGHT.matcher(issue.message()).find()
                && upkeep.lights().stream().flatMap(l -> l.measured().stream()).anyMatch(m -> m.at().equals(place));
    }
}
