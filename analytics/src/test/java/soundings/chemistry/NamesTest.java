package soundings.chemistry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesTest {
    @ParameterizedTest(name = "{0} folds to {1}")
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "PO₄ |po4",
                "Härte|harte",
                "TEMPÉRATURE|temperature",
                "µg/L|ug/l",
                "μg/L|ug/l",
                "mg·L⁻¹|mg·l-1",
                "ºC|°c",
                "℃|°c",
                "  Carb.\u00a0 Hardness |carb. hardness",
                "n–a|n-a",
                "IODINE|iodine",
                "ＫＨ|kh",
            })
    void spellings_meet(String written, String folded) {
        assertThat(Names.fold(written)).isEqualTo(folded);
        assertThat(Names.fold(folded)).isEqualTo(folded);
    }

    @Test
    void folding_does_not_depend_on_the_language_of_the_machine() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(Names.fold("IODINE İ")).isEqualTo("iodine i");
        } finally {
            Locale.setDefault(before);
        }
    }
}
