package soundings.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** How a log is opened and what is said of it, alike for every command that works one out. */
final class LogOptions {
    @Option(
            names = "--setup",
            paramLabel = "FILE",
            description = "the setup workbook (default: <log>-setup.xlsx beside the log)")
    private Optional<Path> setup = Optional.empty();

    @Option(names = "--json", paramLabel = "FILE", description = "also write the results as JSON; - is standard output")
    private Optional<String> json = Optional.empty();

    @Option(names = "--password", paramLabel = "WORD", description = "the password of a protected workbook")
    private Optional<String> password = Optional.empty();

    @Option(names = "--quiet", description = "say nothing but the files written and what could not be done")
    private boolean quiet;

    Optional<Path> setup() {
        return setup;
    }

    Optional<String> json() {
        return json;
    }

    Optional<String> password() {
        return password;
    }

    boolean quiet() {
        return quiet;
    }
}
