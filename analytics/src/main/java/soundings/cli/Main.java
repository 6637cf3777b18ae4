package soundings.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import soundings.template.TemplateProblem;
import soundings.workbook.UnreadableWorkbook;

/** The program: {@code java -jar soundings.jar COMMAND}. */
@Command(
        name = "soundings",
        description = "Reads a reef keeper's test log as it is and writes a month's notebook report beside it.",
        versionProvider = Version.class,
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            ReportCommand.class,
            InspectCommand.class,
            SetupCommand.class,
            WatchCommand.class,
            StockCommand.class,
            StarterCommand.class,
            NotebooksCommand.class,
            HelpCommand.class
        })
public final class Main implements Runnable {
    /** Done; something could not be done; wrong usage. */
    static final int DONE = 0;

    static final int NOT_DONE = 1;
    static final int WRONG_USAGE = 2;

    @Spec
    private @Nullable CommandSpec spec;

    public static void main(String[] args) {
        // POI logs through Log4j, Tablesaw through SLF4J; a keeper wants neither on the screen.
        System.setProperty("java.awt.headless", "true");
        Locale.setDefault(Locale.ROOT);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, Clock.system(ZoneId.systemDefault()), args));
    }

    /** The whole program but for the exit: for tests that call it in their own process. */
    static int run(PrintWriter out, PrintWriter err, Clock clock, String... args) {
        Console console = new Console(out, err, System.console() != null);
        CommandLine line = new CommandLine(Main.class, new Commands(console, clock));
        line.setOut(out).setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler((e, where, parsed) -> said(e, console));
        return line.execute(args);
    }

    /** What is said of a failure: the keeper's own words where it is about their files, else that the program is at fault, and where. */
    static String problem(Exception e) {
        boolean keepers = e instanceof UnreadableWorkbook || e instanceof TemplateProblem || e instanceof CannotDo;
        return keepers
                ? String.valueOf(e.getMessage())
                : "this is a fault of the program, not of your log: " + e + ", at "
                        + (e.getStackTrace().length > 0 ? e.getStackTrace()[0] : "an unknown place");
    }

    private static int said(Exception e, Console console) {
        console.problem(problem(e));
        return NOT_DONE;
    }

    @Override
    public void run() {
        throw new ParameterException(
                Objects.requireNonNull(spec).commandLine(), "say what to do: a command is missing");
    }
}
