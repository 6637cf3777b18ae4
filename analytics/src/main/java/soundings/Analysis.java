package soundings;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import soundings.advice.Advice;
import soundings.advice.Advising;
import soundings.advice.Following;
import soundings.care.Care;
import soundings.care.CareActions;
import soundings.care.Caring;
import soundings.care.Plans;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.estimate.Estimating;
import soundings.findings.Findings;
import soundings.findings.Mentor;
import soundings.findings.MentorNotes;
import soundings.findings.Provenance;
import soundings.history.Histories;
import soundings.history.History;
import soundings.layout.Layouts;
import soundings.log.Log;
import soundings.setup.MentorRange;
import soundings.setup.MentorRanges;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.setup.SetupReading;
import soundings.sheet.Book;
import soundings.upkeep.Upkeep;
import soundings.upkeep.UpkeepActions;

/** The program's table of contents: each stage is a pure function of those before it. */
public final class Analysis {
    private Analysis() {}

    /** Everything found in one log for one month. */
    public static Findings of(
            Book book, Optional<Book> companion, Provenance provenance, Reference reference, Settings settings) {
        return of(book, companion, provenance, new Given(reference, settings, new TreeMap<>()));
    }

    /** What a run is given besides the log and its companion; {@code notes}: what was written into each month's report. */
    public record Given(Reference reference, Settings settings, SortedMap<YearMonth, MentorNotes> notes) {}

    /** The same, with what a mentor wrote into earlier reports. */
    public static Findings of(Book book, Optional<Book> companion, Provenance provenance, Given given) {
        Setup own = setup(companion, given.reference());
        Log log = Layouts.interpret(book, given.reference(), own, given.settings());
        History history = Histories.of(log, own, given.reference(), given.settings());
        YearMonth month = YearMonth.from(history.asOf());
        MentorNotes notes = MentorNotes.all(given.notes().headMap(month).values());
        List<MentorRange> ranges = MentorRanges.of(notes.ranges(), own, given.reference());
        Setup setup = MentorRanges.with(own, ranges);
        History here = history.with(setup);
        Estimates estimates = Estimating.of(here, given.reference());
        Following.End now = new Following.End(here, estimates, Advising.of(here, estimates, given.reference()));
        Settings before = new Settings(given.settings().today(), Optional.of(month.minusMonths(1)));
        History earlier = Histories.of(log, setup, given.reference(), before);
        Following.End then = advised(earlier, given.reference());
        Care care = Caring.of(now.history(), Plans.of(companion, given.reference()), given.reference());
        Advice advice = CareActions.amend(now.advice(), care);
        Upkeep upkeep = Upkeep.of(log, now.history(), now.estimates(), advice, companion, given.reference());
        return new Findings(
                provenance,
                month,
                given.reference(),
                log,
                now.history(),
                now.estimates(),
                UpkeepActions.amend(advice, upkeep),
                care,
                upkeep,
                Following.of(then, now),
                new Mentor(notes.answers(), ranges));
    }

    private static Following.End advised(History earlier, Reference reference) {
        Estimates estimates = Estimating.ofDosed(earlier, reference);
        return new Following.End(earlier, estimates, Advising.dosesOf(earlier, estimates, reference));
    }

    /** Only what the log says, for the commands that ask no more. */
    public static Log understood(Book book, Optional<Book> companion, Reference reference, Settings settings) {
        return Layouts.interpret(book, reference, setup(companion, reference), settings);
    }

    private static Setup setup(Optional<Book> companion, Reference reference) {
        return companion.map(b -> SetupReading.of(b, reference)).orElse(Setup.EMPTY);
    }
}
