package soundings.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soundings.template.Shipped;

/** Which files of a folder are logs: by name, leaving out our own outputs and other programs' lock files. */
final class LogNames {
    private static final Set<String> ENDINGS = Set.of("xlsx", "xlsm", "xls", "ods", "csv", "tsv");

    private static final Pattern REPORT =
            Pattern.compile("(?<log>.*) report \\d{4}-\\d{2}(?: (?<mark>[^(]+?))?(?: \\(2\\))?");

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
        Matcher name = REPORT.matcher(Opened.stem(file));
        return name.matches()
                && (name.group("mark") == null
                        || Shipped.NAMES.contains(name.group("mark"))
                        || hasLog(file, name.group("log")));
    }

    /** A mark may be the name of any notebook: the file is a report where the log it would be of stands beside it. */
    private static boolean hasLog(Path report, String stem) {
        return ENDINGS.stream().anyMatch(ending -> Files.isRegularFile(report.resolveSibling(stem + "." + ending)));
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
