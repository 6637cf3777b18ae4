package soundings.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormatCodeTest {
    @ParameterizedTest(name = "{0} shows {1}")
    @CsvSource(
            delimiter = '~',
            value = {
                "General ~ NUMBER",
                "Standard ~ NUMBER",
                "0.0 ~ NUMBER",
                "0.0\" dKH\" ~ NUMBER",
                "0.0 dKH ~ NUMBER",
                "0\\d ~ NUMBER",
                "[Red]0.00 ~ NUMBER",
                "#,##0.00\\ \"mg/L\" ~ NUMBER",
                "_-* #,##0.00\\ _D_M_-;-* #,##0.00\\ _D_M_- ~ NUMBER",
                "@ ~ NUMBER",
                "0.00E+00 ~ NUMBER",
                "d ~ DATE",
                "m/d/yyyy ~ DATE",
                "[$-409]d-mmm-yy;@ ~ DATE",
                "dddd, mmmm dd, yyyy ~ DATE",
                "mmm yy ~ DATE",
                "yyyy\"年\"m\"月\"d\"日\" ~ DATE",
                "\"day\" d ~ DATE",
                "h:mm ~ TIME",
                "h:mm AM/PM ~ TIME",
                "mm:ss ~ TIME",
                "mm:ss.0 ~ TIME",
                "[h]:mm ~ TIME",
                "[mm]:ss ~ TIME",
                "dd.mm.yyyy hh:mm ~ DATE_AND_TIME",
                "yyyy-mm-dd\\Thh:mm:ss.000 ~ DATE_AND_TIME",
            })
    void a_format_shows_a_number_or_a_moment(String code, String expected) {
        assertThat(FormatCode.of(code).shows().map(Enum::name).orElse("NUMBER")).isEqualTo(expected);
    }
}
