package soundings.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReadmeSheetsTest {
    static Stream<Form> more() {
        return Stream.of(
                CareForms.treatments(),
                CareForms.moves(),
                UpkeepForms.jobs(),
                UpkeepForms.light(),
                UpkeepForms.tests());
    }

    @ParameterizedTest
    @MethodSource("more")
    void the_readme_names_the_columns_of_a_sheet_as_they_are(Form form) throws IOException {
        String readme = Files.readString(Path.of("..", "README.md"), StandardCharsets.UTF_8);
        Matcher row =
                Pattern.compile("(?m)^\\| " + form.sheet() + " \\| ([^|]+) \\|").matcher(readme);

        assertThat(row.find()).isTrue();
        List<String> named = Arrays.stream(
                        row.group(1).replaceAll(" \\([^)]*\\)", "").split(", "))
                .collect(Collectors.toList());
        assertThat(named)
                .containsExactlyInAnyOrderElementsOf(
                        form.fields().stream().map(Field::header).toList());
    }
}
