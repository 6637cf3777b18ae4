package soundings.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "MgCl2·6H2O",
                "MgCl2.6H2O",
                "MgCl2*6H2O",
                "MgCl2 . 6 H2O",
                "MgCl2 x 6 H2O",
                "MgCl2•6H2O",
                "MgCl₂·6H₂O",
                "MgCl2(H2O)6"
            })
    void water_of_crystallisation_is_read_however_it_is_written(String written) {
        assertThat(Formula.of(written).atoms()).isEqualTo(Map.of("Mg", 1.0, "Cl", 2.0, "H", 12.0, "O", 6.0));
    }

    @Test
    void brackets_multiply_what_they_hold() {
        assertThat(Formula.of("Ca3(PO4)2").atoms()).isEqualTo(Map.of("Ca", 3.0, "P", 2.0, "O", 8.0));
        assertThat(Formula.of("K4[Fe(CN)6]").atoms()).isEqualTo(Map.of("K", 4.0, "Fe", 1.0, "C", 6.0, "N", 6.0));
    }

    @Test
    void half_a_water_is_half_a_water() {
        assertThat(Formula.of("CaSO4·0.5H2O").count("H")).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "nacl", "Na(Cl", "NaCl)", "Na+", "2", "MgCl2.", "Na0"})
    void what_is_no_formula_is_refused(String written) {
        assertThatThrownBy(() -> Formula.of(written)).isInstanceOf(IllegalArgumentException.class);
    }
}
