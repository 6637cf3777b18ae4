package soundings.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class StockCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void two_iodine_solutions_are_compared_with_both_strengths_and_cautions() {
        int exit = run("KI 5 g in 1 L", "I2 5 g + KI 10 g in 100 mL");

        assertThat(exit).isZero();
        assertThat(out.toString())
                .contains("iodine      3.822 mg/mL     1 mL in 100 L: +0.03822 mg/L (+38.22 µg/L)")
                .contains("iodine      126.4 mg/mL     1 mL in 100 L: +1.264 mg/L")
                .contains("iodine: 1 mL of \"I2 5 g + KI 10 g in 100 mL\" = 33.08 mL of \"KI 5 g in 1 L\"")
                .contains("A name does not tell the strength")
                .containsOnlyOnce("Caution: Iodine");
    }

    @Test
    void alkalinity_is_told_in_equivalents_and_degrees() {
        run("NaHCO3 80 g in 1 L");

        assertThat(out.toString()).contains("alkalinity  0.9523 meq/mL   1 mL in 100 L: +0.0267 dKH");
    }

    @Test
    void what_a_months_dosing_leaves_is_told_when_asked() {
        int exit = run("NaHCO3 80 g in 1 L", "CaCl2.2H2O 70 g in 1 L", "--ml-per-day", "50", "--litres", "300");

        assertThat(exit).isZero();
        assertThat(out.toString())
                .contains("sodium +109.5 mg/L, chloride +168.8 mg/L, sulfate 0 mg/L: salinity +0.2706 psu");
    }

    @Test
    void a_recipe_that_is_not_understood_is_said_and_the_rest_still_done() {
        int exit = run("strong iodine", "KI 5 g in 1 L");

        assertThat(exit).isEqualTo(1);
        assertThat(err.toString()).contains("\"strong iodine\"");
        assertThat(out.toString()).contains("3.822 mg/mL");
    }

    @Test
    void no_recipe_or_half_an_option_is_wrong_usage() {
        assertThat(run()).isEqualTo(2);
        assertThat(run("KI 5 g in 1 L", "--litres", "100")).isEqualTo(2);
    }

    private int run(String... args) {
        return new CommandLine(new StockCommand())
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(args);
    }
}
