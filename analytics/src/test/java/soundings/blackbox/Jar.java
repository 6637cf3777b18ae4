package soundings.blackbox;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** Runs the built jar as a user does. */
final class Jar {
    private static final Path JAR = Path.of("target", "soundings.jar");

    private Jar() {}

    /** What a run left behind. */
    record Ran(int exit, String out, String err) {}

    /** A run that goes on; what it says stands in two files, outside the folder it works in. */
    record Running(Optional<Process> process, Path out, Path err) {
        static final Running NONE = new Running(Optional.empty(), Path.of(""), Path.of(""));

        void stop() throws IOException, InterruptedException {
            for (Process p : process.stream().toList()) {
                p.destroy();
                p.waitFor(10, TimeUnit.SECONDS);
                Files.delete(out);
                Files.delete(err);
            }
        }
    }

    static Running start(Path folder, String... args) throws IOException {
        Path out = Files.createTempFile("out", ".txt");
        Path err = Files.createTempFile("err", ".txt");
        Process process = new ProcessBuilder(command(args))
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        return new Running(Optional.of(process), out, err);
    }

    private static List<String> command(String... args) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-jar",
                JAR.toAbsolutePath().toString()));
        command.addAll(List.of(args));
        return command;
    }

    static Ran run(Path folder, String... args) throws IOException, InterruptedException {
        List<String> command = command(args);
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!process.waitFor(100, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("still running after 100 s: " + command);
        }
        String said = Files.readString(out, StandardCharsets.UTF_8);
        String problems = Files.readString(err, StandardCharsets.UTF_8);
        Files.delete(out);
        Files.delete(err);
        return new Ran(process.exitValue(), said, problems);
    }
}
