package soundings.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soundings.chemistry.Reference;
import soundings.forms.SetupWorkbook;
import soundings.forms.StarterWorkbook;
import soundings.reference.ReferenceTables;

/** {@code starter}: a blank log to begin with, and its companion. */
@Command(
        name = "starter",
        description = "Writes a blank, well-laid log to begin with, and its blank setup workbook beside it.",
        mixinStandardHelpOptions = true)
final class StarterCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "FILE.xlsx", description = "where the blank log goes")
    private Path file = Path.of("");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    StarterCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (!String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw new ParameterException(
                    spec.commandLine(),
                    file + ": the blank log is a workbook with lists to choose from; name a file that ends in .xlsx");
        }
        if (Files.exists(file)) {
            throw new CannotDo(file + " exists already and is left as it is; name another file");
        }
        Reference reference = ReferenceTables.load();
        Outputs outputs = new Outputs(console);
        console.result(
                outputs.write(file, to -> StarterWorkbook.write(reference, to)).toString());
        Path setup = Opened.setupOf(file);
        if (Files.exists(setup)) {
            console.notice(setup + " exists already and is left as it is");
        } else {
            console.result(outputs.write(setup, to -> SetupWorkbook.blank(reference, to))
                    .toString());
        }
        return Main.DONE;
    }
}
