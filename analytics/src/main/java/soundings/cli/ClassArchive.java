package soundings.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * The classes of a report, loaded and checked once when the program is built: Java's own archive of application classes, beside the
 * jar, read by {@link ShortRun}. Run by the build, never by a user; without the archive everything works, a little later.
 */
public final class ClassArchive {
    private static final int PATIENCE_SECONDS = 120;

    private ClassArchive() {}

    /** Where the archive of a jar stands, whether or not there is one. */
    static String of(String jar) {
        return jar.substring(0, jar.length() - ".jar".length()) + ".jsa";
    }

    /** @param args the jar, and a log to make a report of */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path archive = Path.of(of(args[0]));
        Path folder = Files.createTempDirectory("archive");
        try {
            // Half an archive would stop Java: it gets its name when it is whole.
            Path made = folder.resolve("made.jsa");
            if (run(args[0], Path.of(args[1]), made, folder) == 0 && Files.isRegularFile(made)) {
                Files.move(made, archive, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            remove(folder);
        }
    }

    private static int run(String jar, Path log, Path made, Path folder) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(ShortRun.java(jar));
        command.addAll(1, List.of("-XX:ArchiveClassesAtExit=" + made, "-Xlog:disable"));
        command.addAll(List.of("report", log.toString(), "--quiet", "--out", folder.toString()));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            return Main.NOT_DONE;
        }
        return process.exitValue();
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            all.map(Path::toFile).forEach(File::delete);
        }
        Files.delete(folder);
    }
}
