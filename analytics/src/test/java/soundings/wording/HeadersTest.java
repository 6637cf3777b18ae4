package soundings.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import soundings.chemistry.Scale;

class HeadersTest {
    static Stream<Arguments> headers() {
        return WordingTables.rows("headers.csv")
                .map(r -> Arguments.of(
                        r.getField("text"), r.getField("expected"), Double.parseDouble(r.getField("least"))));
    }

    @ParameterizedTest(name = "\"{0}\" is {1}")
    @MethodSource("headers")
    void a_header_means_what_the_table_says(String text, String expected, double least) {
        List<HeaderMeaning> meanings = Headers.read(WordingTables.spaced(text), WordingTables.WORDS);

        String best = meanings.isEmpty() ? "" : shown(meanings.get(0));
        assertThat(best).as("%s", meanings).startsWith(expected);
        assertThat(meanings.isEmpty() ? 0 : meanings.get(0).score()).isGreaterThanOrEqualTo(least);
    }

    static String shown(HeaderMeaning header) {
        String meaning = header.meaning()
                .match(
                        t -> "test " + t.parameter().id() + " " + t.unit().toLowerCase(Locale.ROOT),
                        d -> "dose " + d.additive() + " " + Math.round(d.mlPerDay() * 1000) / 1000.0,
                        o -> "oneOff " + o.additive() + " " + o.unit(),
                        c -> "change " + c.unit(),
                        r -> "role " + r.role());
        String plain = meaning.strip().replaceAll("\\.0$", "");
        return header.tank().isEmpty() ? plain : plain + " @" + header.tank();
    }

    @ParameterizedTest(name = "{0} counts {1}")
    @org.junit.jupiter.params.provider.CsvSource(
            delimiter = '|',
            value = {
                "PO₄ [ppb P]|ug/L P",
                "PO4-P ppb|ug/L P",
                "PO4-P (mg/L)|mg/L P",
                "Phosphate-P mg/L|mg/L P",
                "Phosphate as P (ug/l)|ug/L P",
                "Phosphate ppb|ug/L",
                "PO4 ppb|ug/L",
                "PO4 (ppm)|mg/L",
                "Nitrate-N mg/L|mg/L N",
                "NO3-N ug/L|ug/L N",
                "Nitrate-N ug/L|ug/L N",
                "NO3-N|mg/L N",
                "NO3 mg/L|mg/L",
                "NH3-N mg/L|mg/L N",
                "NH4 mg/L|mg/L NH4",
                "Carb. hardness, ppm CaCO3|mg/L CaCO3",
                "Alk (CaCO3) ppm|mg/L CaCO3",
                "Alk, mg/L as CaCO3|mg/L CaCO3",
                "Ca ppm CaCO3|mg/L CaCO3",
                "Salt SG|SG",
                "Temp, F|[degF]",
                "Temp C|Cel",
                "K mg/L|mg/L",
                "F mg/L|mg/L",
                "Conductivity mS/cm|mS/cm",
                "Silica ppm Si|mg/L Si"
            })
    void the_unit_and_its_basis_lead_to_one_scale(String header, String scale) {
        Meaning best = Headers.read(header, WordingTables.WORDS).get(0).meaning();

        String found = best.match(
                t -> WordingTables.WORDS
                        .reference()
                        .findScale(t.parameter(), t.unit())
                        .map(Scale::id)
                        .orElse("none for '" + t.unit() + "'"),
                d -> "dose",
                o -> "oneOff",
                c -> "change",
                r -> "role");
        assertThat(found).isEqualTo(scale);
    }

    @Test
    void a_single_letter_counts_for_more_among_other_tests() {
        double alone = Headers.read("K", WordingTables.WORDS).get(0).score();
        List<List<HeaderMeaning>> row =
                Headers.readTogether(List.of("Date", "KH", "Ca", "Mg", "K"), WordingTables.WORDS);

        assertThat(alone).isLessThan(0.5);
        assertThat(row.get(4).get(0).score()).isGreaterThan(0.7);
    }
}
