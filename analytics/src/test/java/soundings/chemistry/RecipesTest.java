package soundings.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.reference.ReferenceTables;

class RecipesTest {
    private static final Reference REFERENCE = ReferenceTables.load();

    /** Arithmetic from atomic weights; rise in canonical units of 1 mL in 1 L. */
    @ParameterizedTest(name = "{0}: 1 mL in 1 L raises {1} by {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "KI 5 g in 1 L                                   | iodine     | 3.82233",
                "5 g KI in 1 L                                   | potassium  | 1.17767",
                "5 g of potassium iodide in 1 litre              | iodine     | 3.82233",
                "I2 5 g + KI 10 g in 100 mL                      | iodine     | 126.447",
                "I2 5 g and KI 10 g per 100 ml                   | iodine     | 126.447",
                "NaHCO3 80 g in 1 L                              | alkalinity | 2.67018",
                "nahco3 80g in 1000 ml of water                  | alkalinity | 2.67018",
                "baking soda 80 g/L                              | alkalinity | 2.67018",
                "80 g/L NaHCO3                                   | alkalinity | 2.67018",
                "CaCl2.2H2O 150 g in 1000 mL                     | calcium    | 40.8938",
                "CaCl2·2H2O 150 g in 1 L                         | calcium    | 40.8938",
                "CaCl2 x 2 H2O 150 g in 1 L                      | calcium    | 40.8938",
                "cacl2 2h2o 150 g in 1 L                         | calcium    | 40.8938",
                "calcium chloride dihydrate 150 g in 1 L         | calcium    | 40.8938",
                "CaCl2.2H2O 150 g 96 % in 1 L                    | calcium    | 39.2580",
                "MgCl2.6H2O 300 g + MgSO4.7H2O 30 g in 1 L       | magnesium  | 38.8249",
                "KI 5 g in 1 US gal                              | iodine     | 1.00975",
                "NaNO3 10 g in 1 L                               | nitrate    | 7.29500",
                "label: 1 mL in 100 L raises alkalinity 0.1 dKH  | alkalinity | 10",
                "1 mL in 100 L raises alkalinity by 0,1 dKH      | alkalinity | 10",
                "10 mL per 100 litres raises calcium 20 ppm      | calcium    | 200",
                "1 mL in 25 US gal raises alk 0.1 meq/L          | alkalinity | 26.5344",
                "5 mL in 50 L raises calcium 2 mg/L and magnesium 0.3 mg/L | magnesium | 3",
                "20 mg/mL iodine                                 | iodine     | 20",
                "iodine 20 mg/mL                                 | iodine     | 20",
                "assay: 19.6 g/L iodide                          | iodine     | 19.6",
                "alkalinity 1900 meq/L                           | alkalinity | 5.32732",
                "1.9 meq/mL alkalinity                           | alkalinity | 5.32732",
                "20 mg/mL KI                                     | iodine     | 15.2893",
                "80 g bicarb in 1 L                              | alkalinity | 2.67018",
                "80 g baking soda (NaHCO3) dissolved in 1 L of RO water | alkalinity | 2.67018",
                "60 g soda (Na2CO3) in 1 L                       | alkalinity | 3.17450",
                "60 g soda (soda ash) in 1 L                     | alkalinity | 3.17450",
                "60 g soda (sodium carbonate anhydrous) in 1 L   | alkalinity | 3.17450",
                "calcium chloride (dihydrate) 150 g in 1 L       | calcium    | 40.8938",
                "150 g calcium chloride (CaCl2.2H2O) in 1 L      | calcium    | 40.8938",
                "Epsom salt (food grade) 100 g in 1 L            | magnesium  | 9.86140",
                "Epsom salt (MgSO4·7H2O) 100 g in 1 L            | magnesium  | 9.86140",
            })
    void a_recipe_tells_the_strength(String recipe, String parameter, double rise) {
        assertThat(understood(recipe).risePerMl().get(parameter)).isCloseTo(rise, within(rise * 2e-5));
    }

    @ParameterizedTest(name = "recipe ''{0}''")
    @ValueSource(
            strings = {
                "",
                "strong iodine",
                "5 % iodine",
                "calcium chloride 150 g in 1 L",
                "KI 1,000 g in 1 L",
                "KI 5 g",
                "KI 5 g in 1 bottle",
                "KI 5 g in 0 L",
                "KI lots in 1 L",
                "XYZ 5 g in 1 L",
                "1 mL in 100 L raises happiness 0.1 dKH",
                "1 mL in 100 L raises alkalinity 0.1 furlongs",
                "1 mL in 100 L raises temperature 1 °C",
                "1 mL in 0 L raises alkalinity 1 dKH",
            })
    void what_does_not_tell_a_strength_is_refused_with_a_reason(String recipe) {
        RecipeReading reading = Recipes.read(recipe, REFERENCE);

        String why = reading.match(u -> "understood as " + u.solution(), RecipeReading.NotUnderstood::why);

        assertThat(why).isNotBlank().doesNotStartWith("understood");
    }

    @Test
    void a_name_that_two_salts_share_is_asked_about() {
        String why = Recipes.read("calcium chloride 150 g in 1 L", REFERENCE)
                .match(u -> "", RecipeReading.NotUnderstood::why);

        assertThat(why).contains("CaCl2 or CaCl2·2H2O");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "60 g soda (sodium carbonate) in 1 L | Na2CO3 or Na2CO3·H2O or Na2CO3·10H2O",
                "60 g washing soda in 1 L            | Na2CO3 or Na2CO3·H2O or Na2CO3·10H2O",
                "60 g soda in 1 L                    | baking soda (NaHCO3)",
                "baking soda (Na2CO3) 60 g in 1 L    | 'baking soda' is NaHCO3, and 'Na2CO3' is Na2CO3",
                "Epsom salt (MgSO4) 100 g in 1 L     | 'Epsom salt' is MgSO4·7H2O, and 'MgSO4' is MgSO4",
                "5 g fizz (fizzium) in 1 L           | no substance 'fizz' is known",
            })
    void a_name_that_leaves_open_what_it_is_is_answered_with_what_it_may_be(String recipe, String said) {
        assertThat(Recipes.read(recipe, REFERENCE).match(u -> "understood", RecipeReading.NotUnderstood::why))
                .contains(said);
    }

    @Test
    void what_brackets_decided_is_said() {
        assertThat(understood("60 g soda (Na2CO3) in 1 L").assumptions()).contains("'soda (Na2CO3)' taken as Na2CO3");
    }

    @Test
    void two_sources_of_an_element_are_compared_by_the_volume_that_does_the_same() {
        StockSolution weak = understood("KI 5 g in 1 L");
        StockSolution strong = understood("I2 5 g + KI 10 g in 100 mL");

        assertThat(weak.millilitresEqualToOneOf(strong, REFERENCE.parameter("iodine"))
                        .orElseThrow())
                .isCloseTo(33.0811, within(1e-3));
        assertThat(weak.millilitresEqualToOneOf(strong, REFERENCE.parameter("calcium")))
                .isEmpty();
    }

    @Test
    void iodine_and_acids_come_with_their_caution() {
        assertThat(understood("I2 5 g + KI 10 g in 100 mL").cautions()).hasSize(1);
        assertThat(understood("20 mg/mL iodine").cautions())
                .isEqualTo(understood("KI 5 g in 1 L").cautions());
        assertThat(understood("1 mL in 100 L raises calcium 2 mg/L").cautions()).isEmpty();
        assertThat(understood("HCl 10 g in 1 L").cautions())
                .singleElement()
                .asString()
                .contains("acid into water");
    }

    @Test
    void dosing_calcium_and_alkalinity_leaves_sodium_and_chloride_as_much_as_the_salts_hold() {
        StockSolution soda = understood("NaHCO3 80 g in 1 L");
        StockSolution calcium = understood("CaCl2.2H2O 70 g in 1 L");

        Creep creep = Creep.of(List.of(new Creep.Dosed(soda, 1000), new Creep.Dosed(calcium, 1000)), 200, REFERENCE);

        assertThat(creep.sodium()).isCloseTo(80_000 * 22.990 / 84.006 / 200, within(1e-6));
        assertThat(creep.chloride()).isCloseTo(70_000 * 70.9 / 147.008 / 200, within(1e-3));
        assertThat(creep.salinity())
                .isCloseTo((creep.sodium() + creep.chloride()) / 1000 / 1.0233412 / (35.16504 / 35), within(1e-6));
        assertThat(creep.notCounted()).isEmpty();
    }

    @Test
    void what_a_label_does_not_say_is_not_counted_as_nothing() {
        Creep creep = Creep.of(List.of(new Creep.Dosed(understood("20 mg/mL iodine"), 10)), 200, REFERENCE);

        assertThat(creep.notCounted()).containsExactly("20 mg/mL iodine");
    }

    private static StockSolution understood(String recipe) {
        return Recipes.read(recipe, REFERENCE).match(RecipeReading.Understood::solution, n -> {
            throw new AssertionError(n.written() + ": " + n.why());
        });
    }
}
