package soundings.golden;

import java.nio.file.Path;
import java.time.LocalDate;
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
        String setup = file.replaceAll("\\.[a-z]+$", "") + "-setup.xlsx";
        return Analysis.of(
                WorkbookReader.read(SAMPLES.resolve(file), Optional.empty()),
                Optional.of(WorkbookReader.read(SAMPLES.resolve(setup), Optional.empty())),
                new Provenance(file, "0".repeat(64), setup, "", "1.0.0"),
                ReferenceTables.load(),
                new Settings(LocalDate.of(2026, 11, 25), Optional.empty()));
    }
}
