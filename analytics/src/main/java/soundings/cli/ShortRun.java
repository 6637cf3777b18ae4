package soundings.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The same command in a second Java process, set up for work that is over in seconds: the virtual machine's default compiles for
 * hours of running, which costs more than the report itself, and a jar cannot ask for another setting. See decision 0008.
 */
final class ShortRun {
    private static final Set<String> COMMANDS = Set.of("report", "inspect");
    private static final String DONE_BY = "soundings.second";

    private ShortRun() {}

    /** @return the exit code; empty where this process is to do the work itself */
    static OptionalInt of(String... args) {
        if (!wanted(args)) {
            return OptionalInt.empty();
        }
        try {
            Process second =
                    new ProcessBuilder(command(jar(), args)).inheritIO().start();
            Runtime.getRuntime().addShutdownHook(new Thread(second::destroy));
            return OptionalInt.of(second.waitFor());
        } catch (IOException cannotStart) {
            return OptionalInt.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return OptionalInt.of(Main.NOT_DONE);
        }
    }

    /** Not from a folder of classes, and not where the user gave the virtual machine settings of their own. */
    private static boolean wanted(String... args) {
        return args.length > 0
                && COMMANDS.contains(args[0])
                && jar().endsWith(".jar")
                && !jar().contains(java.io.File.pathSeparator)
                && System.getProperty(DONE_BY) == null
                && ProcessHandle.current()
                        .info()
                        .arguments()
                        .map(all -> all.length > 0 && all[0].equals("-jar"))
                        .orElse(true);
    }

    /** With {@code -jar} the class path is the jar as named on the command line. */
    private static String jar() {
        return System.getProperty("java.class.path", "");
    }

    static List<String> command(String jar, String... args) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command = new ArrayList<>(List.of(java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(List.of("-Xshare:auto", "-D" + DONE_BY + "=true", "-jar", jar));
        command.addAll(List.of(args));
        return command;
    }
}
