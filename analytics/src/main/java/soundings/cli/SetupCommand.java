package soundings.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import soundings.Analysis;
import soundings.chemistry.Reference;
import soundings.forms.SetupWorkbook;
import soundings.log.Log;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;

/** {@code setup}: writes the companion workbook, pre-filled, never over what the keeper entered. */
@Command(
        name = "setup",
        description = "Writes <log>-setup.xlsx beside the log, filled in with what was understood.",
        mixinStandardHelpOptions = true)
final class SetupCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Parameters(paramLabel = "LOG", description = "the test log")
    private Path log = Path.of("");

    @Option(names = "--password", paramLabel = "WORD", description = "the password of a protected workbook")
    private Optional<String> password = Optional.empty();

    @Option(names = "--quiet", description = "say nothing but the files written and what could not be done")
    private boolean quiet;

    SetupCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        console.quiet(quiet);
        Opened opened = Opened.of(log, Optional.empty(), password);
        Reference reference = ReferenceTables.load();
        Log read = Analysis.understood(
                opened.book(), opened.setup(), reference, new Settings(LocalDate.now(clock), Optional.empty()));
        Path target = Opened.setupOf(log);
        Path written =
                new Outputs(console).write(target, to -> SetupWorkbook.write(opened.setupFile(), read, reference, to));
        console.result(written.toString());
        return Main.DONE;
    }
}
