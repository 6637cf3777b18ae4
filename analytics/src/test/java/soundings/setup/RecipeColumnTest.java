package soundings.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import soundings.reference.ReferenceTables;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Value;

class RecipeColumnTest {
    @Test
    void a_recipe_tells_the_strength_where_no_rise_is_written() {
        Setup setup = read("Soda", "alkalinity", "NaHCO3 80 g in 1 L");

        assertThat(setup.issues()).isEmpty();
        assertThat(setup.additives().get(0).risePerMlInOneLitre().orElseThrow()).isCloseTo(2.67018, within(1e-4));
    }

    @Test
    void a_recipe_that_does_not_raise_the_parameter_is_said_and_no_strength_taken() {
        Setup setup = read("Soda", "calcium", "NaHCO3 80 g in 1 L");

        assertThat(setup.issues()).hasSize(1);
        assertThat(setup.additives().get(0).risePerMlInOneLitre()).isEmpty();
    }

    @Test
    void a_name_for_a_recipe_is_no_strength() {
        Setup setup = read("Iodine", "iodine", "strong iodine");

        assertThat(setup.issues()).hasSize(1);
        assertThat(setup.additives().get(0).risePerMlInOneLitre()).isEmpty();
    }

    /** Sodium comes along with most salts; what else it raises is what it is given for. */
    @Test
    void a_recipe_without_a_parameter_is_taken_for_the_one_thing_it_raises_besides_salt_and_that_is_said() {
        Setup setup = read("Soda", "", "NaHCO3 80 g in 1 L");

        assertThat(setup.additives())
                .singleElement()
                .satisfies(a -> assertThat(a.parameter().id()).isEqualTo("alkalinity"));
        assertThat(setup.issues()).singleElement().satisfies(i -> {
            assertThat(i.where().orElseThrow().place()).isEqualTo("Additives!C2");
            assertThat(i.message()).contains("Parameter").contains("alkalinity");
        });
    }

    @Test
    void one_that_raises_two_is_taken_for_what_it_is_called_after_and_otherwise_asked_about() {
        assertThat(read("Iodine, strong", "", "KI 5 g in 1 L").additives())
                .singleElement()
                .satisfies(a -> assertThat(a.parameter().id()).isEqualTo("iodine"));

        Setup setup = read("Blue bottle", "", "KI 5 g in 1 L");
        assertThat(setup.additives()).isEmpty();
        assertThat(setup.issues())
                .singleElement()
                .satisfies(i -> assertThat(i.message())
                        .contains("Parameter")
                        .contains("iodine")
                        .contains("potassium"));
    }

    @Test
    void a_strength_from_a_recipe_rests_on_the_cell_of_the_recipe() {
        assertThat(read("Soda", "alkalinity", "NaHCO3 80 g in 1 L")
                        .additives()
                        .get(0)
                        .cell())
                .isEqualTo("Additives!C2");
    }

    private static Setup read(String... row) {
        List<Cell> cells = new ArrayList<>();
        List<String> header = List.of("Additive", "Parameter", "Recipe");
        for (int column = 0; column < header.size(); column++) {
            cells.add(Cell.of(0, column, new Value.Text(header.get(column))));
            cells.add(Cell.of(1, column, new Value.Text(row[column])));
        }
        Book book = new Book("setup", List.of(Grid.of("Additives", false, cells, List.of())), List.of());
        return SetupReading.of(book, ReferenceTables.load());
    }
}
