package soundings.golden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.notebook.ChartSpec;
import soundings.notebook.Notebook;
import soundings.notebook.Notebooks;
import soundings.notebook.Section;
import soundings.quantity.Interval;
import soundings.reference.ReferenceTables;
import soundings.template.Shipped;

/** A test is shown as its keeper writes it: the shelf of the club's sample is written in meq/L, µg/L and °F, its reef in dKH and °C. */
class ShownUnitsTest {
    private static final Reference REFERENCE = ReferenceTables.load();
    private static final Notebook CLUB = Notebooks.run(Shipped.named("monthly"), Sampled.findings("club log.xlsx"));

    @Test
    void a_test_is_told_in_the_unit_it_is_written_in_and_in_no_other() {
        assertThat(prose("tank-frag-shelf-alkalinity"))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).doesNotContain("dKH"))
                .anySatisfy(line -> assertThat(line).contains("meq/L"));
        assertThat(prose("tank-frag-shelf-temperature"))
                .anySatisfy(line -> assertThat(line).contains("°F"))
                .allSatisfy(line -> assertThat(line).doesNotContain("°C"));
        assertThat(prose("tank-library-reef-temperature"))
                .anySatisfy(line -> assertThat(line).contains("°C"))
                .allSatisfy(line -> assertThat(line).doesNotContain("Cel"));
        assertThat(prose("tank-library-reef-alkalinity"))
                .anySatisfy(line -> assertThat(line).contains("dKH"))
                .allSatisfy(line -> assertThat(line).doesNotContain("meq/L"));
    }

    @Test
    void charts_are_in_that_unit_as_well() {
        List<ChartSpec.TimeChart> charts = CLUB.charts()
                .flatMap(c -> c.spec().match(Stream::of, r -> Stream.<ChartSpec.TimeChart>of(), s -> Stream.of()))
                .toList();

        assertThat(charts)
                .filteredOn(c -> c.id().startsWith("tank-frag-shelf"))
                .extracting(c -> c.panel().unit())
                .contains("meq/L", "°F", "µg/L")
                .doesNotContain("dKH", "Cel");
    }

    @Test
    void what_it_is_worked_out_in_is_said_once() {
        assertThat(CLUB.tables().filter(t -> t.id().equals("units")))
                .singleElement()
                .satisfies(t -> assertThat(t.rows()).hasSize(3));
    }

    /** Degrees Fahrenheit: NIST SP 811, appendix B.9, {@code t/°C = (t/°F - 32)/1.8}. */
    @Test
    void a_rate_has_no_zero_point_in_it() {
        Scale fahrenheit = scale("temperature", "[degF]");

        assertThat(fahrenheit.written(25)).isCloseTo(77, within(1e-9));
        assertThat(fahrenheit.change(0.5, 25)).isCloseTo(0.9, within(1e-9));
        assertThat(fahrenheit.decimals()).isEqualTo(1);
    }

    @Test
    void a_curved_scale_converts_the_ends_of_an_interval_and_rates_as_they_are_there() {
        Scale gravity = scale("salinity", "SG 25/25");
        Interval level = new Interval(35, 34, 36);

        Interval written = gravity.written(level);

        assertThat(gravity.canonical(written.low())).isCloseTo(34, within(1e-6));
        assertThat(gravity.canonical(written.high())).isCloseTo(36, within(1e-6));
        assertThat(gravity.change(2, 35)).isCloseTo(written.high() - written.low(), within(1e-9));
        assertThat(gravity.decimals()).isEqualTo(4);
    }

    @Test
    void a_bound_is_shown_as_it_was_set() {
        Scale meq = scale("alkalinity", "meq/L");
        double set = meq.canonical(2.7);

        assertThat(meq.decimalsOf(meq.written(set))).isEqualTo(1);
        assertThat(meq.decimalsOf(meq.written(7))).isEqualTo(meq.decimals());
    }

    private static Scale scale(String parameter, String id) {
        Parameter p = REFERENCE.parameter(parameter);
        Optional<Scale> found =
                REFERENCE.scales(p).stream().filter(s -> s.id().equals(id)).findFirst();
        return found.orElseThrow();
    }

    /** Every sentence of a section, the workings of a dose apart. */
    private static List<String> prose(String section) {
        return CLUB.sections().stream()
                .filter(s -> s.id().equals(section))
                .map(Section::items)
                .flatMap(List::stream)
                .flatMap(i -> i.match(
                        p -> p.blocks().stream().map(b -> b.text()),
                        t -> Stream.<String>empty(),
                        c -> Stream.of(c.spec().finding()),
                        w -> Stream.of(w.result()),
                        a -> Stream.empty()))
                .toList();
    }
}
