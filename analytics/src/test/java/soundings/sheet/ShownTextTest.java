package soundings.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shown texts of the English notation; ISO/IEC 29500-1 §18.8.31 describes the codes. */
class ShownTextTest {
    @ParameterizedTest(name = "{0} as {1} shows {2}")
    @CsvSource(
            delimiter = '~',
            nullValues = "-",
            value = {
                "8.2 ~ General ~ 8.2",
                "8.199999999999999 ~ General ~ 8.2",
                "1350 ~ General ~ 1350",
                "0.00002 ~ General ~ 0.00002",
                "8 ~ 0.0 ~ 8.0",
                "8.25 ~ 0.0 ~ 8.3",
                "1.005 ~ 0.00 ~ 1.01",
                "-8.25 ~ 0.0 ~ -8.3",
                "0.125 ~ 0% ~ 13%",
                "0.125 ~ 0.0% ~ 12.5%",
                "1350 ~ #,##0 ~ 1,350",
                "1350.5 ~ #,##0.00 ~ 1,350.50",
                "999 ~ #,##0 ~ 999",
                "1234567 ~ #,##0, ~ 1,235",
                "8.2 ~ 0.0\" dKH\" ~ 8.2 dKH",
                "8.2 ~ 0.0 dKH ~ 8.2 dKH",
                "5 ~ 000 ~ 005",
                "0.5 ~ #.## ~ .5",
                "-5 ~ 0;(0) ~ (5)",
                "0 ~ 0;-0;\"none\" ~ none",
                "0.01 ~ [<0.02]\"<0.02\";0.00 ~ <0.02",
                "0.05 ~ [<0.02]\"<0.02\";0.00 ~ 0.05",
                "-1 ~ [Red]0.0 ~ -1.0",
                "12 ~ [$€-407]0.00 ~ €12.00",
                "12345 ~ 0.00E+00 ~ 1.23E+04",
                "0.5 ~ # ?/? ~ 0.5",
                "8.2 ~ @ ~ 8.2",
            })
    void a_number_is_shown_as_its_format_says(double number, String format, String expected) {
        Look look = new Look(format, false, false, false, false);

        assertThat(ShownText.of(new Value.Numeric(number), look)).isEqualTo(expected);
    }
}
