package soundings.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import soundings.chemistry.Alias;

class VocabularyTest {
    /** The patterns and these rows have to know each other: a meaning that only one side has is a slip. */
    @Test
    void every_meaning_of_the_rows_is_used_and_every_used_one_has_rows() {
        assertThat(Clinic.REFERENCE.aliases(Alias.Kind.CARE).stream()
                        .map(Alias::means)
                        .collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(
                        "sign",
                        "ill",
                        "well",
                        "not",
                        "without",
                        "link",
                        "gone",
                        "free",
                        "allClear",
                        "given",
                        "counted",
                        "unsaid",
                        "clear",
                        "water",
                        "ahead",
                        "course",
                        "stopped",
                        "over",
                        "day",
                        "challenge",
                        "then");
    }
}
