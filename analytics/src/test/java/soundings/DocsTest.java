package soundings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the documents say of the code is what the code says. {@code -Ddocs.update} rewrites the table and fails, so that the diff is read. */
class DocsTest {
    private static final Path README = Path.of("..", "README.md");
    private static final Path DEVELOPERS = Path.of("..", "DEVELOPERS.md");
    private static final Pattern MARKED =
            Pattern.compile("(<!-- may-use -->\n)(.*?)(<!-- /may-use -->)", Pattern.DOTALL);

    @Test
    void the_printed_table_of_packages_is_the_one_the_code_is_held_to() throws IOException {
        String text = Files.readString(DEVELOPERS, StandardCharsets.UTF_8);
        Matcher marked = MARKED.matcher(text);
        assertThat(marked.find()).isTrue();
        if (System.getProperty("docs.update") != null) {
            String updated = text.substring(0, marked.start(2)) + table() + text.substring(marked.end(2));
            Files.writeString(DEVELOPERS, updated, StandardCharsets.UTF_8);
        }

        assertThat(marked.group(2)).isEqualTo(table());
    }

    private static String table() {
        String rows = Packages.MAY_USE.entrySet().stream()
                .map(e -> "| " + e.getKey() + " | " + joined(e.getValue().ours()) + " | "
                        + joined(e.getValue().libraries()) + " |\n")
                .collect(Collectors.joining());
        return "| package | may use | and of libraries |\n|---|---|---|\n" + rows;
    }

    private static String joined(List<String> names) {
        return names.isEmpty() ? "–" : String.join(", ", names);
    }

    @Test
    void every_file_the_readme_names_is_there() throws IOException {
        String text = Files.readString(README, StandardCharsets.UTF_8);
        List<String> named = Pattern.compile("\"(sample-workbooks/[^\"]+)\"|\\]\\(([^)#]+)\\)")
                .matcher(text)
                .results()
                .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
                .filter(name -> !name.startsWith("http"))
                .toList();

        assertThat(named)
                .isNotEmpty()
                .allSatisfy(name -> assertThat(Path.of("..", name)).exists());
    }
}
