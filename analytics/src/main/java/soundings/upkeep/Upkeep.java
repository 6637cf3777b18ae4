package soundings.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import soundings.advice.Action;
import soundings.advice.Advice;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.history.History;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.setup.OtherSheet;
import soundings.sheet.Book;

/**
 * The rest of the keeper's month: jobs, light, animals, tests.
 *
 * @param jobs open ones first, the worst and oldest of them before the others
 * @param paces how long jobs waited that were done, by month
 * @param actions for the first page, the most pressing first
 * @param issues rows of the setup workbook that could not be read
 */
public record Upkeep(
        List<Job> jobs,
        List<Pace> paces,
        List<Light> lights,
        List<Animals> animals,
        Testing testing,
        List<Action> actions,
        List<Issue> issues) {
    public static final Upkeep NOTHING = new Upkeep(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            new Testing(List.of(), List.of(), List.of()),
            List.of(),
            List.of());

    public Upkeep {
        jobs = List.copyOf(jobs);
        paces = List.copyOf(paces);
        lights = List.copyOf(lights);
        animals = List.copyOf(animals);
        actions = List.copyOf(actions);
        issues = List.copyOf(issues);
    }

    /** @param companion the setup workbook, for its sheets Jobs, Light and Tests */
    public static Upkeep of(
            Log log,
            History history,
            Estimates estimates,
            Advice advice,
            Optional<Book> companion,
            Reference reference) {
        Companion sheets = new Companion(companion, reference, new ArrayList<>());
        List<Job> jobs = Jobs.of(history, sheets.rows("Jobs", "Job", Jobs.Row::of), reference);
        List<Light> lights = Lights.of(log, history, sheets.rows("Light", "Place", Lights.Row::of), reference);
        Testing testing =
                Tests.of(history, estimates, advice, reference, sheets.rows("Tests", "Parameter", Tests.Row::of));
        return new Upkeep(
                jobs,
                Pace.of(jobs),
                lights,
                AnimalNotes.of(history, estimates, advice, reference),
                testing,
                UpkeepActions.of(jobs, lights, testing, history.asOf()),
                sheets.issues());
    }

    /** The setup workbook's own sheets, if there is one; what could not be read gathers in {@code issues}. */
    private record Companion(Optional<Book> book, Reference reference, List<Issue> issues) {
        private <T> List<T> rows(String sheet, String key, Function<OtherSheet.Line, T> read) {
            Optional<OtherSheet.Read<T>> found = book.map(b -> OtherSheet.read(b, sheet, key, reference, read));
            found.ifPresent(f -> issues.addAll(f.issues()));
            return found.map(OtherSheet.Read::rows).orElse(List.of());
        }
    }

    public List<Job> openJobs() {
        return jobs.stream().filter(Job::open).toList();
    }
}
