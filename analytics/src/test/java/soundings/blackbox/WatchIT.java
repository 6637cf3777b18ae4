package soundings.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code watch} while a log is saved the ways programs save: into a pipe, as a user's script would see it. */
class WatchIT {
    private static final Path LOG =
            Path.of("..", "sample-workbooks", "one line a test.xlsx").toAbsolutePath();
    private static final String PAGE = "log report";

    @TempDir
    private Path folder;

    private Path log = Path.of("");
    private Jar.Running watch = Jar.Running.NONE;

    @BeforeEach
    void a_log_is_watched_and_was_reported_once() throws Exception {
        log = Files.copy(LOG, folder.resolve("log.xlsx"));
        watch = Jar.start(folder, "watch", "log.xlsx");
        until(lines -> lines.size() == 2);
    }

    @AfterEach
    void it_is_stopped() throws Exception {
        watch.stop();
    }

    private List<String> lines() throws IOException {
        return Files.readAllLines(watch.out(), StandardCharsets.UTF_8);
    }

    private void until(Predicate<List<String>> holds) throws IOException, InterruptedException {
        long end = System.nanoTime() + 120_000_000_000L;
        while (!holds.test(lines())) {
            assertThat(System.nanoTime()).as("after two minutes: %s", lines()).isLessThan(end);
            Thread.sleep(50);
        }
    }

    /** A second report would follow at once: no more lines than these after a while. */
    private void staysAt(int lines) throws IOException, InterruptedException {
        Thread.sleep(2_500);
        assertThat(lines()).hasSize(lines).allMatch(l -> l.contains(PAGE));
        assertThat(watch.err()).isEmptyFile();
    }

    @Test
    void a_save_through_a_rename_with_lock_files_and_a_burst_of_writes_gives_one_new_report() throws Exception {
        byte[] whole = Files.readAllBytes(LOG);
        Path part = folder.resolve("lu1234abc.tmp");

        Files.writeString(folder.resolve(".~lock.log.xlsx#"), "someone", StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("~$log.xlsx"), "someone", StandardCharsets.UTF_8);
        for (int i = 1; i <= 5; i++) {
            Files.write(part, Arrays.copyOf(whole, whole.length * i / 5));
            Thread.sleep(20);
        }
        Files.move(part, log, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        Files.write(log, whole);
        Files.delete(folder.resolve(".~lock.log.xlsx#"));

        until(lines -> lines.size() == 4);
        staysAt(4);
    }

    @Test
    void a_half_saved_log_is_waited_for_and_reported_when_it_is_whole() throws Exception {
        byte[] whole = Files.readAllBytes(LOG);

        Files.write(log, Arrays.copyOf(whole, whole.length / 2));
        Thread.sleep(1_500);
        assertThat(lines()).hasSize(2);
        assertThat(watch.err()).isEmptyFile();
        Files.write(log, whole);

        until(lines -> lines.size() == 4);
        staysAt(4);
    }
}
