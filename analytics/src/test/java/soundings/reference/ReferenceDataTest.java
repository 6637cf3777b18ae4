package soundings.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import soundings.chemistry.Alias;
import soundings.chemistry.Ammonia;
import soundings.chemistry.Boron;
import soundings.chemistry.CarbonateConstants;
import soundings.chemistry.Equation;
import soundings.chemistry.Names;
import soundings.chemistry.NaturalSeawater;
import soundings.chemistry.NutrientAcids;
import soundings.chemistry.Parameter;
import soundings.chemistry.Part;
import soundings.chemistry.PhScale;
import soundings.chemistry.RecipeReading;
import soundings.chemistry.Recipes;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.chemistry.Seawater;
import soundings.chemistry.Source;
import soundings.chemistry.StockSolution;
import soundings.chemistry.TargetRange;

/** The facts themselves: what a contributor's new row must satisfy. */
class ReferenceDataTest {
    private static final Reference REFERENCE = ReferenceTables.load();
    private static final List<String> TABLES = List.of(
            "parameters.csv",
            "units.csv",
            "scales.csv",
            "targets.csv",
            "constants.csv",
            "elements.csv",
            "salts.csv",
            "cautions.csv",
            "seawater.csv",
            "traces.csv",
            "equations.csv",
            "parts.csv");

    static Stream<Parameter> parameters() {
        return REFERENCE.parameters().stream();
    }

    static Stream<Alias> aliases() {
        return Stream.of(Alias.Kind.values()).flatMap(k -> REFERENCE.aliases(k).stream());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("parameters")
    void a_parameter_has_names_a_canonical_scale_and_rising_scales(Parameter parameter) {
        assertThat(REFERENCE.aliases(Alias.Kind.PARAMETER))
                .anyMatch(a -> a.means().equals(parameter.id()));
        assertThat(REFERENCE.findParameterNamed(parameter.id())).contains(parameter);
        assertThat(REFERENCE.canonicalScale(parameter))
                .isEqualTo(REFERENCE.scales(parameter).get(0));
        assertThat(REFERENCE.canonicalScale(parameter).canonical(7)).isCloseTo(7, within(1e-12));
        assertThat(REFERENCE.usualScales(parameter)).isNotEmpty();
        double low = parameter.plausibleLow();
        double high = parameter.plausibleHigh();
        for (Scale scale : REFERENCE.scales(parameter)) {
            assertThat(scale.written(high)).as(scale.toString()).isGreaterThan(scale.written(low));
            assertThat(scale.canonical(scale.written(high)))
                    .as(scale.toString())
                    .isCloseTo(high, within(1e-8 * high));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("aliases")
    void a_word_is_folded_and_means_something(Alias alias) {
        assertThat(Names.fold(alias.text())).isEqualTo(alias.text()).isNotBlank();
        assertThat(alias.means()).isNotBlank();
    }

    @Test
    void every_source_is_used_and_every_rule_of_thumb_says_it_has_none() {
        Set<String> used = TABLES.stream().flatMap(ReferenceDataTest::sourcesOf).collect(Collectors.toSet());
        Map<String, Source> known =
                REFERENCE.sources().stream().collect(Collectors.toMap(Source::key, Function.identity()));

        assertThat(known.keySet()).containsAll(used);
        assertThat(REFERENCE.targets()).allMatch(t -> known.containsKey(t.source()));
        assertThat(known.keySet()).isEqualTo(used);
    }

    @Test
    void an_equation_is_named_after_the_function_that_computes_it() {
        Set<String> functions = Stream.of(
                        Seawater.class, CarbonateConstants.class, NutrientAcids.class, Ammonia.class, PhScale.class)
                .flatMap(c -> Stream.of(c.getDeclaredMethods()))
                .map(Method::getName)
                .filter(n -> n.contains("_"))
                .collect(Collectors.toSet());
        Stream.of(Boron.values()).map(Boron::name).forEach(functions::add);

        assertThat(functions)
                .containsAll(REFERENCE.equations().stream().map(Equation::id).toList());
    }

    @Test
    void kilograms_become_litres_by_the_density_of_the_same_equation() {
        double kilogramsPerLitre = Seawater.kilogramsPerLitre(35, 25);
        Scale perKilogram =
                REFERENCE.findScale(REFERENCE.parameter("calcium"), "mg/kg").orElseThrow();

        assertThat(perKilogram.canonical(1)).isCloseTo(kilogramsPerLitre, within(1e-7));
        assertThat(REFERENCE
                        .findConstant("seawater_density_S35_25C")
                        .orElseThrow()
                        .value())
                .isCloseTo(1000 * kilogramsPerLitre, within(1e-4));
    }

    @Test
    void a_piece_of_equipment_has_words_and_each_of_its_words_has_a_piece() {
        assertThat(REFERENCE.aliases(Alias.Kind.PART).stream().map(Alias::means).collect(Collectors.toSet()))
                .isEqualTo(REFERENCE.parts().stream().map(Part::id).collect(Collectors.toSet()));
    }

    @Test
    void a_target_lies_within_what_is_plausible() {
        assertThat(REFERENCE.targets()).allSatisfy((TargetRange t) -> {
            assertThat(t.low())
                    .isLessThan(t.high())
                    .isGreaterThanOrEqualTo(t.parameter().plausibleLow());
            assertThat(t.high()).isLessThan(t.parameter().plausibleHigh());
        });
    }

    @Test
    void the_sea_lies_within_what_is_plausible_and_its_salt_adds_up_to_one() {
        assertThat(REFERENCE.substances().seaSalt().stream()
                        .mapToDouble(s -> s.massFraction())
                        .sum())
                .isCloseTo(1, within(1e-6));
        for (Parameter parameter : REFERENCE.parameters()) {
            NaturalSeawater.level(parameter, 35, REFERENCE)
                    .ifPresent(level -> assertThat(level)
                            .as(parameter.id())
                            .isBetween(parameter.plausibleLow(), parameter.plausibleHigh()));
        }
    }

    @ParameterizedTest(name = "{0} + {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "units.csv  | mg/L,mass,1,0,-,DEF              | is there twice",
                "units.csv  | mg/dL,mass,ten,0,-,DEF           | should be a number",
                "units.csv  | mg/dL,mass,10,0,,DEF             | is blank",
                "units.csv  | mg/dL,weight,10,0,-,DEF          | known are",
                "units.csv  | mg/dL,mass,10,0,-,HEARSAY        | known are",
                "units.csv  | mg/dL,mass,10,0,-                | has 5 cells",
                "scales.csv | nitrate,mg/dL,mg/dL,mg/dL,=,1,no,-,DEF | known are",
                "scales.csv | nitrate,odd,odd,mg/L,No4x,1,no,-,DEF | chemical formula",
                "targets.csv| iron,3,1,PRACTICE                | runs from low to high",
                "unit-spellings.csv | dKH,alkalinity,mval/l        | stands for meq/L already",
                "salts.csv  | Uo2,unobtainium oxide,0,-,-,AW21 | no atomic weight",
            })
    void a_wrong_row_is_refused_with_file_and_line(String file, String row, String message) {
        assertThatThrownBy(() -> ReferenceTables.load(with(Map.of(file, row))))
                .isInstanceOf(RuntimeException.class)
                .hasMessageContaining(file + ":")
                .hasMessageContaining(message);
    }

    @Test
    void an_element_a_unit_and_a_salt_are_added_by_rows_alone() {
        Reference grown = ReferenceTables.load(with(Map.of(
                "elements.csv", "W,tungsten,183.84,AW21",
                "parameters.csv", "tungsten,Tungsten,W,ug/L,W,2,0,50,TRACE,OBS",
                "parameter-names.csv", "tungsten,tungsten; wolfram; w",
                "units.csv", "mg/hL,mass,0.01,0,-,DEF",
                "scales.csv", "*,mg/hL,mg/hL,mg/hL,=,1,no,-,DEF",
                "unit-spellings.csv", "mg/hL,-,mg per hectolitre",
                "salts.csv", "Na2WO4·2H2O,sodium tungstate,0,-,metal,AW21")));
        Parameter tungsten = grown.findParameterNamed("Wolfram").orElseThrow();

        StockSolution stock = Recipes.read("sodium tungstate 1 g in 1 L", grown)
                .match(RecipeReading.Understood::solution, n -> {
                    throw new AssertionError(n.why());
                });

        assertThat(grown.findScale(tungsten, "mg per hectolitre").orElseThrow().canonical(3))
                .isCloseTo(30, within(1e-9));
        assertThat(stock.rise(tungsten, 1, 1)).isCloseTo(1000 * 183.84 / 329.846, within(0.01));
        assertThat(stock.cautions()).hasSize(1);
    }

    private static Function<String, Reader> with(Map<String, String> rows) {
        return file -> new StringReader(text(file) + rows.getOrDefault(file, "") + "\n");
    }

    private static String text(String file) {
        try (BufferedReader lines = new BufferedReader(ReferenceTables.packaged(file))) {
            return lines.lines().collect(Collectors.joining("\n")) + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<String> sourcesOf(String file) {
        return text(file).lines().filter(l -> !l.startsWith("#")).skip(1).map(l -> l.substring(l.lastIndexOf(',') + 1));
    }
}
