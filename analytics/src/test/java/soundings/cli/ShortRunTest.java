package soundings.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ShortRunTest {
    @Test
    void a_class_folder_is_run_where_it_is() {
        assertThat(ShortRun.of("report", "log.xlsx")).isEqualTo(ShortRun.NOT_WANTED);
    }

    @Test
    void the_second_process_gets_every_argument_as_it_stands_and_is_marked_so_that_it_starts_no_third() {
        List<String> command = ShortRun.command("a folder/soundings.jar", "report", "club log.xlsx", "--quiet");

        assertThat(command).endsWith("-jar", "a folder/soundings.jar", "report", "club log.xlsx", "--quiet");
        assertThat(command).contains("-Dsoundings.second=true");
    }
}
