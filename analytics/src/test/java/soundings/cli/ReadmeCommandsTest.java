package soundings.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ReadmeCommandsTest {
    private record Ran(int exit, String out) {}

    private static String readme() throws IOException {
        return Files.readString(Path.of("..", "README.md"), StandardCharsets.UTF_8);
    }

    private static Ran run(String... args) {
        StringWriter said = new StringWriter();
        PrintWriter writer = new PrintWriter(said);
        int exit = Main.run(writer, writer, Clock.systemUTC(), args);
        writer.flush();
        return new Ran(exit, said.toString());
    }

    @Test
    void help_lists_the_readmes_commands_and_the_readme_lists_helps() throws IOException {
        List<String> named = Pattern.compile("(?m)^\\| `(\\w+)")
                .matcher(readme())
                .results()
                .map(m -> m.group(1))
                .toList();
        List<String> helped = Pattern.compile("(?m)^  (\\w+)  ")
                .matcher(run("--help").out())
                .results()
                .map(m -> m.group(1))
                .filter(name -> !name.equals("help"))
                .toList();

        assertThat(named).hasSizeGreaterThan(5).containsExactlyInAnyOrderElementsOf(helped);
    }

    @Test
    void every_option_the_readme_names_is_an_option_of_its_command() throws IOException {
        List<MatchResult> rows = Pattern.compile("(?m)^\\| `(\\w+).*$")
                .matcher(readme())
                .results()
                .toList();
        int checked = 0;
        for (MatchResult row : rows) {
            String help = run(row.group(1), "--help").out();
            for (MatchResult option :
                    Pattern.compile("--[a-z]+").matcher(row.group()).results().toList()) {
                assertThat(help).as(row.group(1)).contains(option.group());
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(4);
    }

    @Test
    void the_readmes_lines_that_need_no_file_run() throws IOException {
        List<String> recipes = Pattern.compile("`stock \"([^\"]+)\"`")
                .matcher(readme())
                .results()
                .map(m -> m.group(1))
                .toList();

        assertThat(recipes)
                .isNotEmpty()
                .allSatisfy(r -> assertThat(run("stock", r).exit()).isZero());
        assertThat(run("notebooks").exit()).isZero();
        assertThat(run("notebooks").out()).contains("monthly", "mentor");
    }
}
