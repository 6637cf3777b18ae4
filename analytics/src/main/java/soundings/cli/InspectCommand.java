package soundings.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import soundings.Analysis;
import soundings.findings.Findings;
import soundings.reference.ReferenceTables;
import soundings.results.ResultsJson;
import soundings.setup.Settings;

/** {@code inspect}: how everything was read, and nothing else. */
@Command(
        name = "inspect",
        description = "Shows how every sheet, column and odd cell of a log was read; writes no report.",
        mixinStandardHelpOptions = true)
final class InspectCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Parameters(paramLabel = "LOG", description = "the test log")
    private Path log = Path.of("");

    @Mixin
    private LogOptions of = new LogOptions();

    InspectCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        console.quiet(of.quiet());
        Opened opened = Opened.of(log, of.setup(), of.password());
        Opened.needless(log, of.password()).ifPresent(console::notice);
        Findings findings = Analysis.of(
                opened.book(),
                opened.setup(),
                opened.provenance(""),
                ReferenceTables.load(),
                new Settings(LocalDate.now(clock), Optional.empty()));
        boolean toScreen = of.json().filter("-"::equals).isPresent();
        if (!toScreen) {
            List<String> lines = Inspection.lines(opened.book(), findings);
            lines.forEach(console::result);
        }
        of.json().ifPresent(target -> {
            if (toScreen) {
                console.result(Text.of(to -> ResultsJson.write(findings, to)));
            } else {
                new Outputs(console).write(Path.of(target), to -> ResultsJson.write(findings, to));
            }
        });
        if (findings.log().saysNothing()) {
            console.problem(opened.book().name()
                    + ": this is no log: no result, dose, water change or note with a date was found in it"
                    + Checks.otherwise(log));
            return Main.NOT_DONE;
        }
        return Main.DONE;
    }
}
