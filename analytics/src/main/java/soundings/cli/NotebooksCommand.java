package soundings.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import soundings.template.Shipped;

/** {@code notebooks}: lists them, or copies one to edit. */
@Command(
        name = "notebooks",
        description = "Lists the notebooks and what each answers; --copy gives one to edit.",
        mixinStandardHelpOptions = true)
final class NotebooksCommand implements Callable<Integer> {
    private final Console console;

    @Option(
            names = "--copy",
            paramLabel = "NAME",
            description = "copy this notebook to FILE, to edit and give to report --notebook")
    private String copy = "";

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "where the copy goes")
    private List<Path> file = List.of();

    NotebooksCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (copy.isEmpty()) {
            Shipped.NAMES.forEach(name ->
                    console.result(String.format(java.util.Locale.ROOT, "%-10s %s", name, Shipped.answers(name))));
            return Main.DONE;
        }
        if (!Shipped.NAMES.contains(copy)) {
            throw new CannotDo(
                    "there is no notebook '" + copy + "'; the notebooks are " + String.join(", ", Shipped.NAMES));
        }
        Path target = file.isEmpty() ? Path.of(copy + ".md") : file.get(0);
        if (Files.exists(target)) {
            throw new CannotDo(target + " exists already and is left as it is; name another file");
        }
        console.result(new Outputs(console)
                .write(target, to -> Text.write(Shipped.named(copy).text(), to))
                .toString());
        return Main.DONE;
    }
}
