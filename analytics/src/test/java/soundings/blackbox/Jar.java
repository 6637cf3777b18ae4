package soundings.blackbox;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs the built jar as a user does. */
final class Jar {
    private static final Path JAR = Path.of("target", "soundings.jar");

    private Jar() {}

    /** What a run left behind. */
    record Ran(int exit, String out, String err) {}

    static Ran run(Path folder, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-jar",
                JAR.toAbsolutePath().toString()));
        command.addAll(List.of(args));
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
        String said = java.nio.file.Files.readString(out, StandardCharsets.UTF_8);
        String problems = java.nio.file.Files.readString(err, StandardCharsets.UTF_8);
        java.nio.file.Files.delete(out);
        java.nio.file.Files.delete(err);
        return new Ran(process.exitValue(), said, problems);
    }
}
