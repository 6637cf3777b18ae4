package soundings.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soundings.notebook.Notebooks;
import soundings.setup.Settings;
import soundings.xlsx.XlsxReport;

/** {@code report}: the main job. */
@Command(
        name = "report",
        description = "Writes the month's report as HTML and XLSX beside each log; for a folder an index page besides.",
        mixinStandardHelpOptions = true)
final class ReportCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Parameters(
            arity = "1..*",
            paramLabel = "LOG|FOLDER",
            description = "the test log: xlsx, xlsm, xls, ods or csv; a folder: every log in it, and an index page")
    private List<Path> logs = List.of();

    @Option(
            names = "--month",
            paramLabel = "YYYY-MM",
            converter = Month.class,
            description = "the month to report (default: the last one with a reading)")
    private Optional<YearMonth> month = Optional.empty();

    @Option(
            names = "--notebook",
            paramLabel = "NAME|FILE",
            defaultValue = "monthly",
            description = "which notebook to run, by name or as a file of your own (default: ${DEFAULT-VALUE})")
    private String notebook = "monthly";

    @Option(names = "--out", paramLabel = "DIR", description = "where to write (default: beside the log)")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private LogOptions of = new LogOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    ReportCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        console.quiet(of.quiet());
        readyTheWriting();
        Settings settings = new Settings(LocalDate.now(clock), month);
        ReportJob job = new ReportJob(
                console, new ReportJob.Asked(settings, notebook, of.setup(), out, of.json(), of.password()));
        int worst = Main.DONE;
        for (Path log : logs) {
            worst = Math.max(worst, Files.isDirectory(log) ? club(log, settings, job) : job.runOrSay(log));
        }
        return worst;
    }

    /** Loads what the notebook and its workbook need beside the reading; where that fails, the work itself will say why. */
    private static void readyTheWriting() {
        Thread readying = new Thread(
                () -> {
                    Notebooks.prepare();
                    XlsxReport.prepare();
                },
                "readying");
        readying.setDaemon(true);
        readying.start();
    }

    private int club(Path folder, Settings settings, ReportJob job) {
        if (of.json().isPresent() || of.setup().isPresent()) {
            throw new ParameterException(spec.commandLine(), "--json and --setup go with one log, not with a folder");
        }
        try {
            return new ClubRun(console, settings, job, out).run(folder);
        } catch (CannotDo e) {
            console.problem(String.valueOf(e.getMessage()));
            return Main.NOT_DONE;
        }
    }
}
