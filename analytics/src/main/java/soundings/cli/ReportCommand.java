package soundings.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import soundings.setup.Settings;

/** {@code report}: the main job. */
@Command(
        name = "report",
        description = "Writes the month's report as HTML and XLSX beside each log.",
        mixinStandardHelpOptions = true)
final class ReportCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Parameters(arity = "1..*", paramLabel = "LOG", description = "the test log: xlsx, xlsm, xls, ods or csv")
    private List<Path> logs = List.of();

    @Option(
            names = "--month",
            paramLabel = "YYYY-MM",
            description = "the month to report (default: the last one with a reading)")
    private Optional<YearMonth> month = Optional.empty();

    @Option(
            names = "--notebook",
            paramLabel = "NAME|FILE",
            defaultValue = "monthly",
            description = "which notebook to run, by name or as a file of your own (default: ${DEFAULT-VALUE})")
    private String notebook = "monthly";

    @Option(
            names = "--setup",
            paramLabel = "FILE",
            description = "the setup workbook (default: <log>-setup.xlsx beside the log)")
    private Optional<Path> setup = Optional.empty();

    @Option(names = "--out", paramLabel = "DIR", description = "where to write (default: beside the log)")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--json", paramLabel = "FILE", description = "also write the results as JSON; - is standard output")
    private Optional<String> json = Optional.empty();

    @Option(names = "--password", paramLabel = "WORD", description = "the password of a protected workbook")
    private Optional<String> password = Optional.empty();

    @Option(names = "--quiet", description = "say only what could not be done")
    private boolean quiet;

    ReportCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        console.quiet(quiet);
        ReportJob job =
                new ReportJob(console, new Settings(LocalDate.now(clock), month), notebook, setup, out, json, password);
        int worst = Main.DONE;
        for (Path log : logs) {
            worst = Math.max(worst, job.runOrSay(log));
        }
        return worst;
    }
}
