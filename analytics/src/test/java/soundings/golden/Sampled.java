package soundings.golden;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import soundings.Analysis;
import soundings.findings.Findings;
import soundings.findings.Provenance;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.workbook.WorkbookReader;

/** The findings of a sample workbook with its companion, as if read in late November 2026. */
public final class Sampled {
    private static final Path SAMPLES = Path.of("..", "sample-workbooks");

    private Sampled() {}

    /** @param file such as {@code club log.xlsx} */
    public static Findings findings(String file) {
        return of(file, companion(file), Optional.empty());
    }

    /** As they were for a month gone by. */
    static Findings findings(String file, YearMonth month) {
        return of(file, companion(file), Optional.of(month));
    }

    private static String companion(String file) {
        return file.replaceAll("\\.[a-z]+$", "") + "-setup.xlsx";
    }

    /** The same log, nothing but it known. */
    static Findings withoutSetup(String file) {
        return of(file, "", Optional.empty());
    }

    private static Findings of(String file, String setup, Optional<YearMonth> month) {
        return Analysis.of(
                WorkbookReader.read(SAMPLES.resolve(file), Optional.empty()),
                Optional.of(setup)
                        .filter(s -> !s.isEmpty())
                        .map(s -> WorkbookReader.read(SAMPLES.resolve(s), Optional.empty())),
                new Provenance(file, "0".repeat(64), setup, "", "1.0.0"),
                ReferenceTables.load(),
                new Settings(LocalDate.of(2026, 11, 25), month));
    }
}
