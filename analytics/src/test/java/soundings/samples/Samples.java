package soundings.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Every sample workbook; run its main to write them anew into {@code sample-workbooks/}. */
public final class Samples {
    static final Path FOLDER = Path.of("..", "sample-workbooks");

    private Samples() {}

    static List<Sample> all() {
        return List.of(
                ClubLog.sample(),
                LongFormLog.sample(),
                ExchangeCsv.sample(),
                TraceElementLog.sample(),
                ClinicLog.sample());
    }

    public static void main(String[] args) throws IOException {
        for (Sample sample : all()) {
            Files.write(FOLDER.resolve(sample.fileName()), sample.log());
            Files.write(FOLDER.resolve(sample.stem() + "-setup.xlsx"), sample.setup());
            Files.writeString(
                    FOLDER.resolve(sample.stem() + ".expected.csv"),
                    sample.truth().stream().collect(Collectors.joining("\n", Truth.HEAD + "\n", "\n")));
        }
    }
}
