package soundings.cli;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The same command in a second Java process, set up for work that is over in seconds: the virtual machine's default compiles for
 * hours of running, which costs more than the report itself, and a jar cannot ask for another setting. See decision 0008. Written
 * without lambdas, which would take this process as long again.
 */
final class ShortRun {
    /** No exit code of a process. */
    static final int NOT_WANTED = -1;

    private static final Set<String> COMMANDS = Set.of("report", "inspect");
    private static final String DONE_BY = "soundings.second";

    private ShortRun() {}

    /** @return the exit code; {@link #NOT_WANTED} where this process is to do the work itself */
    static int of(String... args) {
        if (!wanted(args)) {
            return NOT_WANTED;
        }
        try {
            Process second =
                    new ProcessBuilder(command(jar(), args)).inheritIO().start();
            Runtime.getRuntime().addShutdownHook(new End(second));
            return second.waitFor();
        } catch (IOException cannotStart) {
            return NOT_WANTED;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Main.NOT_DONE;
        }
    }

    /** Whoever ends the first process ends the second. */
    private static final class End extends Thread {
        private final Process second;

        End(Process second) {
            super("end");
            this.second = second;
        }

        @Override
        public void run() {
            second.destroy();
        }
    }

    /** Not from a folder of classes, and not where the user gave the virtual machine settings of their own. */
    private static boolean wanted(String... args) {
        return args.length > 0
                && COMMANDS.contains(args[0])
                && isOurs(new File(jar()))
                && System.getProperty(DONE_BY) == null
                && startedPlainly(ProcessHandle.current().info().arguments().orElse(new String[0]));
    }

    /** Whether this class comes from that jar, and from nowhere else. */
    private static boolean isOurs(File jar) {
        try {
            CodeSource here = ShortRun.class.getProtectionDomain().getCodeSource();
            return jar.isFile()
                    && here != null
                    && new File(here.getLocation().toURI()).getCanonicalFile().equals(jar.getCanonicalFile());
        } catch (IOException | URISyntaxException | IllegalArgumentException elsewhere) {
            return false;
        }
    }

    /** Where the system does not tell how this process was started, it was plainly. */
    private static boolean startedPlainly(String... arguments) {
        return arguments.length == 0 || arguments[0].equals("-jar");
    }

    /** With {@code -jar} the class path is the jar as named on the command line. */
    private static String jar() {
        return System.getProperty("java.class.path", "");
    }

    static List<String> command(String jar, String... args) {
        List<String> command = java(jar);
        String archive = ClassArchive.of(jar);
        if (new File(archive).isFile()) {
            // Of another Java or another build it is of no use, and passed over without a word.
            command.addAll(1, List.of("-XX:SharedArchiveFile=" + archive, "-Xlog:disable"));
        }
        command.addAll(List.of(args));
        return command;
    }

    /** How Java is started for a short run of this jar; the program's own arguments follow. */
    static List<String> java(String jar) {
        String java = System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
        List<String> command = new ArrayList<>(List.of(java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(List.of("-Xshare:auto", "-D" + DONE_BY + "=true", "-jar", jar));
        return command;
    }
}
