package soundings;

import java.time.YearMonth;
import java.util.Optional;
import soundings.advice.Advice;
import soundings.advice.Advising;
import soundings.care.Care;
import soundings.care.CareActions;
import soundings.care.Caring;
import soundings.care.Plans;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.estimate.Estimating;
import soundings.findings.Findings;
import soundings.findings.Provenance;
import soundings.history.Histories;
import soundings.history.History;
import soundings.layout.Layouts;
import soundings.log.Log;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.setup.SetupReading;
import soundings.sheet.Book;

/** The program's table of contents: each stage is a pure function of those before it. */
public final class Analysis {
    private Analysis() {}

    /** Everything found in one log for one month. */
    public static Findings of(
            Book book, Optional<Book> companion, Provenance provenance, Reference reference, Settings settings) {
        Setup setup = setup(companion, reference);
        Log log = Layouts.interpret(book, reference, setup, settings);
        History history = Histories.of(log, setup, reference, settings);
        Estimates estimates = Estimating.of(history, reference);
        Care care = Caring.of(history, Plans.of(companion, reference), reference);
        Advice advice = CareActions.amend(Advising.of(history, estimates, reference), care);
        return new Findings(
                provenance, YearMonth.from(history.asOf()), reference, log, history, estimates, advice, care);
    }

    /** Only what the log says, for the commands that ask no more. */
    public static Log understood(Book book, Optional<Book> companion, Reference reference, Settings settings) {
        return Layouts.interpret(book, reference, setup(companion, reference), settings);
    }

    private static Setup setup(Optional<Book> companion, Reference reference) {
        return companion.map(b -> SetupReading.of(b, reference)).orElse(Setup.EMPTY);
    }
}
