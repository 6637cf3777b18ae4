package soundings.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import soundings.setup.Settings;
import soundings.workbook.UnreadableWorkbook;

/** {@code watch}: a report at each save, until stopped. */
@Command(
        name = "watch",
        description = "Reports again each time the log is saved; stop it with Ctrl-C.",
        mixinStandardHelpOptions = true)
final class WatchCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Parameters(paramLabel = "LOG|FOLDER", description = "the log, or a folder of logs")
    private Path what = Path.of("");

    @Option(
            names = "--notebook",
            paramLabel = "NAME|FILE",
            defaultValue = "monthly",
            description = "which notebook to run")
    private String notebook = "monthly";

    @Option(names = "--out", paramLabel = "DIR", description = "where to write (default: beside the log)")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--quiet", description = "say nothing but the files written and what could not be done")
    private boolean quiet;

    private final Map<Path, String> reported = new HashMap<>();

    WatchCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        console.quiet(quiet);
        boolean one = !Files.isDirectory(what);
        if (one && !Files.isRegularFile(what)) {
            throw new CannotDo(what + ": there is no such log or folder to watch");
        }
        Path folder = one ? Folders.of(what) : what.toAbsolutePath();
        List<Path> logs = one ? List.of(what) : LogNames.in(folder);
        console.said("watching " + what + "; Ctrl-C stops it");
        new SaveWatch(folder, saved -> logOf(saved).filter(log -> !one || isWhat(log)))
                .forever(() -> first(logs), this::again);
        return Main.DONE;
    }

    private boolean isWhat(Path log) {
        return log.toAbsolutePath().equals(what.toAbsolutePath());
    }

    /** The log to report when this file was saved: itself, or the one it is the setup of. */
    private static Optional<Path> logOf(Path saved) {
        if (!LogNames.isSetup(saved)) {
            return Optional.of(saved).filter(LogNames::isLog);
        }
        String stem = Opened.stem(saved).replaceFirst("-setup$", "");
        try {
            return LogNames.in(Folders.of(saved)).stream()
                    .filter(p -> Opened.stem(p).equals(stem))
                    .findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private void first(List<Path> logs) {
        logs.forEach(log -> report(log, true));
        reported.clear();
    }

    /** A log may become whole while it is being tried: what was read then is not reported once more. */
    private boolean again(Path log, boolean last) {
        boolean done = content(log).equals(Optional.ofNullable(reported.get(log)));
        return done || report(log, last);
    }

    /** What tells the content of a log and its setup; empty while they cannot be read. */
    private static Optional<String> content(Path log) {
        try {
            return Optional.of(content(log, Opened.sha256(log)));
        } catch (RuntimeException beingSaved) {
            return Optional.empty();
        }
    }

    /** @param hash of the log as it was read */
    private static String content(Path log, String hash) {
        Path setup = Opened.setupOf(log);
        return hash + (Files.isRegularFile(setup) ? Opened.sha256(setup) : "");
    }

    private boolean report(Path log, boolean last) {
        Settings settings = new Settings(LocalDate.now(clock), Optional.empty());
        try {
            ReportJob job = new ReportJob(console, ReportJob.Asked.plain(settings, notebook, out));
            ReportJob.Reported done = job.report(log);
            List<Path> written = done.written();
            reported.put(log, content(log, done.findings().provenance().sha256()));
            console.said(LocalTime.now(clock).truncatedTo(ChronoUnit.SECONDS) + " " + log.getFileName());
            written.forEach(path -> console.result(path.toString()));
            return true;
        } catch (UnreadableWorkbook e) {
            console.progressDone();
            if (last) {
                console.problem(Main.problem(e));
            }
            return last;
        } catch (RuntimeException e) {
            console.progressDone();
            console.problem(Main.problem(e));
            return true;
        }
    }
}
