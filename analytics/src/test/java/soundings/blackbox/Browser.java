package soundings.blackbox;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A real browser without a window, found on the path: gives a page as it stands after its scripts have run. */
final class Browser {
    private static final int LONGEST_S = 280;

    private final Path program;

    private Browser(Path program) {
        this.program = program;
    }

    static Optional<Browser> find() {
        List<String> folders =
                List.of(Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator));
        return Stream.of("chromium", "chromium-browser", "google-chrome")
                .flatMap(name -> folders.stream().map(folder -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .map(Browser::new);
    }

    /** @param folder for the browser's own files */
    String after(Path page, Path folder) throws IOException, InterruptedException {
        Path out = folder.resolve("page.txt");
        Process process = new ProcessBuilder(
                        program.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--user-data-dir=" + folder.resolve("browser"),
                        "--window-size=1800,900",
                        "--virtual-time-budget=100000",
                        "--dump-dom",
                        page.toUri().toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(out.toFile())
                .start();
        if (!process.waitFor(LONGEST_S, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("the browser was still busy after " + LONGEST_S + " s");
        }
        return Files.readString(out, StandardCharsets.UTF_8);
    }
}
