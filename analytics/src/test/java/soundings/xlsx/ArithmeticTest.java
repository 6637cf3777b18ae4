package soundings.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArithmeticTest {
    private static final Map<String, Arithmetic.Named> NAMES = Map.of(
            "use", new Arithmetic.Named("B4", 0.5),
            "litres", new Arithmetic.Named("B5", 300),
            "rise_1", new Arithmetic.Named("B6", 2));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    use * litres / rise_1        | B4*B5/B6           | 75
                    use\u00d7litres\u00f7rise_1  | B4*B5/B6           | 75
                    litres - use - 1             | B5-B4-1            | 298.5
                    litres - (use + 1)           | B5-(B4+1)          | 298.5
                    (litres + 1.5e2) / 3         | (B5+1.5e2)/3       | 150
                    -rise_1 ^ 2                  | (-(B6^2))          | -4
                    rise_1 ^ rise_1 ^ 3          | (B6^(B6^3))        | 256
                    2 * -use                     | 2*(-B4)            | -1
                    """)
    void arithmetic_over_earlier_lines_becomes_a_formula_over_their_cells(String source, String formula, double value) {
        Arithmetic.Formula made = Arithmetic.of(source, NAMES).orElseThrow();

        assertThat(made.text()).isEqualTo(formula);
        assertThat(made.value()).isCloseTo(value, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "use *",
                "use litres",
                "unknown + 1",
                "B4 + 1",
                "SUM(use)",
                "use & litres",
                "\"text\"",
                "HYPERLINK(\"http://example.org\")",
                "'Other sheet'!A1",
                "use / 0",
                "(use",
                "1..2",
                "use; litres"
            })
    void anything_else_is_no_formula(String source) {
        assertThat(Arithmetic.of(source, NAMES)).isEmpty();
    }

    @Test
    void a_formula_that_does_not_give_the_stated_value_is_left_out() {
        assertThat(Arithmetic.of("use * litres", NAMES, 150)).isPresent();
        assertThat(Arithmetic.of("use * litres", NAMES, 150.1)).isEmpty();
    }
}
