package soundings.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Which files of a folder are logs: by name, leaving out our own outputs and other programs' lock files. */
final class LogNames {
    private static final Set<String> ENDINGS = Set.of("xlsx", "xlsm", "xls", "ods", "csv", "tsv");

    private LogNames() {}

    static List<Path> in(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(LogNames::isLog)
                    .sorted()
                    .toList();
        }
    }

    static boolean isSetup(Path file) {
        return ours(file) && Opened.stem(file).endsWith("-setup");
    }

    static boolean isLog(Path file) {
        return ours(file) && !Opened.stem(file).endsWith("-setup") && !isReport(file);
    }

    static boolean isReport(Path file) {
        return Opened.stem(file).matches(".* report \\d{4}-\\d{2}( \\(2\\))?");
    }

    private static boolean ours(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return !name.startsWith("~$")
                && !name.startsWith(".")
                && dot > 0
                && ENDINGS.contains(name.substring(dot + 1).toLowerCase(Locale.ROOT));
    }
}
