package soundings.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import soundings.setup.Settings;

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

    @Option(names = "--quiet", description = "say only what could not be done")
    private boolean quiet;

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
        logs(folder, one).forEach(this::report);
        console.notice("watching " + what + "; Ctrl-C stops it");
        new SaveWatch(folder, LogNames::isLogOrSetup)
                .forever(saved -> logFor(saved, one).ifPresent(this::report));
        return Main.DONE;
    }

    private List<Path> logs(Path folder, boolean one) throws IOException {
        return one ? List.of(what) : LogNames.in(folder);
    }

    /** The log to report when this file was saved: itself, or the one it is the setup of. */
    private Optional<Path> logFor(Path saved, boolean one) {
        Path log = saved;
        if (LogNames.isSetup(saved)) {
            String stem = Opened.stem(saved).replaceFirst("-setup$", "");
            try (Stream<Path> beside = Files.list(Folders.of(saved))) {
                Optional<Path> of = beside.filter(LogNames::isLog)
                        .filter(p -> Opened.stem(p).equals(stem))
                        .findFirst();
                if (of.isEmpty()) {
                    return of;
                }
                log = of.get();
            } catch (IOException e) {
                return Optional.empty();
            }
        }
        boolean ours = !one || log.toAbsolutePath().equals(what.toAbsolutePath());
        return ours ? Optional.of(log) : Optional.empty();
    }

    private void report(Path log) {
        new ReportJob(
                        console,
                        new Settings(LocalDate.now(clock), Optional.empty()),
                        notebook,
                        Optional.empty(),
                        out,
                        Optional.empty(),
                        Optional.empty())
                .runOrSay(log);
    }
}
