package soundings.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.chemistry.Reference;
import soundings.log.Issue;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Value;

class SetupReadingTest {
    private static final Reference REFERENCE = SmallReference.load();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    # US and imperial gallons: NIST SP 811 (2008) B.8; Weights and Measures Act 1985
                    90          | 90
                    80 US gal   | 302.83294272
                    80 imp gal  | 363.6872
                    8,5         | 8.5
                    8.5 L       | 8.5
                    1.200,5 L   | 1200.5
                    1,200.5     | 1200.5
                    1 200       | 1200
                    250000 mL   | 250
                    ~400        | 400
                    0,400       | 0.4
                    """)
    void a_tank_s_volume_may_carry_its_unit(String written, double litres) {
        Setup setup = read(sheet("Tanks", "Tank,Litres", "Cube," + quoted(written)));

        assertThat(setup.tanks())
                .singleElement()
                .satisfies(t -> assertThat(t.litres().orElseThrow()).isCloseTo(litres, within(1e-6)));
        assertThat(setup.issues()).isEmpty();
    }

    @Test
    void a_comma_that_may_be_either_mark_is_not_guessed() {
        Setup setup = read(sheet("Tanks", "Tank,Litres", "Cube;1,200"));

        assertThat(setup.tanks())
                .singleElement()
                .satisfies(t -> assertThat(t.litres()).isEmpty());
        assertThat(kinds(setup)).containsExactly("unreadableSetting");
    }

    @Test
    void the_decimal_mark_of_the_preferences_settles_it() {
        Setup setup = read(
                sheet("Tanks", "Tank,Litres", "Cube;1,200"), sheet("Preferences", "Name,Value", "Decimal mark;point"));

        assertThat(setup.tanks().get(0).litres()).hasValue(1200);
        assertThat(setup.issues()).isEmpty();
    }

    @Test
    void the_plausible_range_settles_a_comma_in_a_level() {
        Setup setup = read(sheet("Fresh mix", "Parameter,Value,Unit", "magnesium;1,350;mg/L", "alk;8,200;dKH"));

        assertThat(setup.freshMix()).extracting(Setup.FreshMix::value).containsExactly(1350.0, 8.2);
    }

    @Test
    void a_gallon_without_its_country_is_said_to_be_assumed() {
        Setup setup = read(sheet("Tanks", "Tank,Litres", "Cube,80 gal"));

        assertThat(setup.tanks().get(0).litres().orElseThrow()).isCloseTo(302.833, within(1e-3));
        assertThat(kinds(setup)).containsExactly("assumed");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    # rise, unit, of mL, in litres -> canonical units by which 1 mL raises 1 L
                    alkalinity | 5    | dKH        | 1  | 1   | 5
                    alkalinity | 1    | meq/L      | 10 | 100 | 28.0385
                    alkalinity | 17.848 | mg/L CaCO3 | '' | ''  | 100.0002
                    kh         | 0,5  | dKH        | 2  | 25 L | 6.25
                    iodine     | 10   | ug/L       | 1  | 100 | 1
                    iodine     | 10 ug/L | ''      | 1  | 100 | 1
                    calcium    | 37   | ppm        | 1  | 1   | 37
                    """)
    void a_rise_becomes_what_one_millilitre_does_to_one_litre(
            String parameter, String rise, String unit, String ofMl, String inLitres, double expected) {
        Setup setup = read(sheet(
                "Additives",
                "Additive,Parameter,Rise,Unit,Of mL,In litres",
                String.join(";", "A", parameter, rise, unit, ofMl, inLitres)));

        assertThat(setup.issues()).isEmpty();
        assertThat(setup.additives().get(0).risePerMlInOneLitre().orElseThrow())
                .isCloseTo(expected, within(1e-4 * expected));
    }

    @Test
    void a_rise_is_a_difference_so_an_offset_between_degrees_does_not_count() {
        Setup setup = read(sheet("Kits", "Parameter,Kit,Step,Unit", "temperature,probe,0.9,°F"));

        assertThat(setup.kits().get(0).step().orElseThrow()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void a_level_on_an_offset_scale_keeps_its_offset() {
        Setup setup = read(sheet("Targets", "Parameter,Low,High,Unit", "temperature,75.2,78.8,°F"));

        assertThat(setup.targets().get(0).low()).isCloseTo(24, within(1e-9));
        assertThat(setup.targets().get(0).high()).isCloseTo(26, within(1e-9));
    }

    @Test
    void an_unreadable_rise_leaves_the_strength_unknown_and_keeps_the_additive() {
        Setup setup = read(sheet(
                "Additives",
                "Additive,Written as,Parameter,Rise,Unit,Of mL",
                "A;alk;alkalinity;5 or 6;dKH;1",
                "B;;alkalinity;5;dKH;a cap"));

        assertThat(setup.additives())
                .extracting(Setup.Additive::risePerMlInOneLitre)
                .containsOnly(OptionalDouble.empty());
        assertThat(setup.issues()).hasSize(2);
    }

    @Test
    void other_names_are_split_at_semicolons() {
        Book book = new Book(
                "s",
                List.of(grid("Tanks", List.of(List.of("Tank", "Written as"), List.of("Cube", "cube; small one ;")))),
                List.of());

        Setup setup = SetupReading.of(book, REFERENCE);

        assertThat(setup.tanks().get(0).writtenAs()).containsExactly("cube", "small one");
        assertThat(setup.findTank("SMALL  ONE")).isPresent();
    }

    @Test
    void bad_rows_are_told_with_their_place_and_the_rest_is_kept() {
        Setup setup = read(
                sheet("Tanks", "Tank,Litres", ",20", "Cube,90", "cube,80", "Reef,-4"),
                sheet("Fresh mix", "Parameter,Value,Unit", "krypton,1,mg/L", "calcium,425,stone", "calcium,425,ppm"),
                sheet("Targets", "Parameter,Low,High,Unit", "calcium,450,400,mg/L", "phosphate,,0.1,mg/L"),
                sheet("Columns", "Sheet,Header,Use", "Log,Alk,maybe"));

        assertThat(setup.tanks()).extracting(Setup.Tank::name).containsExactly("Cube", "Reef");
        assertThat(setup.freshMix()).isEmpty();
        assertThat(setup.targets())
                .singleElement()
                .satisfies(t -> assertThat(t.low()).isZero());
        assertThat(setup.columns().get(0).use()).isEmpty();
        assertThat(setup.issues())
                .extracting(i -> i.kind() + " " + i.where().orElseThrow().place())
                .contains(
                        "incompleteRow Tanks!A2",
                        "repeatedRow Tanks!A4",
                        "unreadableSetting Tanks!B5",
                        "unknownParameter Fresh mix!A2",
                        "unknownUnit Fresh mix!B3",
                        "repeatedRow Fresh mix!A4",
                        "implausibleSetting Targets!B2",
                        "unreadableSetting Columns!C2");
    }

    @Test
    void a_level_no_tank_has_is_left_out() {
        Setup setup = read(sheet("Fresh mix", "Parameter,Value,Unit", "alkalinity,146,dKH"));

        assertThat(setup.freshMix()).isEmpty();
        assertThat(kinds(setup)).containsExactly("implausibleSetting");
    }

    @Test
    void a_sheet_without_its_key_column_is_not_used() {
        Setup setup = read(sheet("Tanks", "Name,Litres", "Cube,90"));

        assertThat(setup.tanks()).isEmpty();
        assertThat(setup.issues())
                .singleElement()
                .satisfies(i -> assertThat(i.severity()).isEqualTo(Issue.Severity.SERIOUS));
    }

    @ParameterizedTest
    @CsvSource({"2026-04-23,2026-04-23", "23.4.2026,2026-04-23", "4/23/2026,2026-04-23", "5/5/2026,2026-05-05"})
    void a_date_typed_as_text_is_read_when_it_can_mean_one_day_only(String written, LocalDate date) {
        assertThat(read(sheet("Tanks", "Tank,Since", "Cube," + written))
                        .tanks()
                        .get(0)
                        .since())
                .hasValue(date);
    }

    @Test
    void a_date_that_may_be_two_days_is_not_guessed_unless_the_order_is_set() {
        Grid tanks = sheet("Tanks", "Tank,Since", "Cube,3/4/2026");

        assertThat(read(tanks).tanks().get(0).since()).isEmpty();
        assertThat(read(tanks, sheet("Preferences", "Name,Value", "Date order,month first"))
                        .tanks()
                        .get(0)
                        .since())
                .isEqualTo(Optional.of(LocalDate.of(2026, 3, 4)));
    }

    @Test
    void the_tank_s_own_mix_and_range_come_before_those_of_all_tanks() {
        Setup setup = read(
                sheet("Tanks", "Tank,Written as", "Cube,C1"),
                sheet("Fresh mix", "Tank,Parameter,Value", ",calcium,425", "C1,calcium,440"),
                sheet("Targets", "Tank,Parameter,Low,High", "Cube,calcium,400,420", ",calcium,410,450"));

        assertThat(setup.findFreshMix("Cube", SmallReference.CALCIUM)
                        .orElseThrow()
                        .value())
                .isEqualTo(440);
        assertThat(setup.findFreshMix("Reef", SmallReference.CALCIUM)
                        .orElseThrow()
                        .value())
                .isEqualTo(425);
        assertThat(setup.findTarget("c1", SmallReference.CALCIUM).orElseThrow().low())
                .isEqualTo(400);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void column_order_sheet_order_other_sheets_and_locale_change_nothing(long seed) {
        List<List<String>> additives = List.of(
                List.of("Additive", "Written as", "Parameter", "Rise", "Unit", "Of mL", "In litres", "My notes"),
                List.of("A", "alk;kh", "alkalinity", "5", "dKH", "1", "1", "12,5 euro"),
                List.of("C", "", "calcium", "0,37", "ppm", "1", "100", ""));
        Setup plain = SetupReading.of(
                new Book(
                        "s",
                        List.of(grid("Additives", additives), sheet("Tanks", "Tank,Litres", "Cube,90")),
                        List.of()),
                REFERENCE);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            Book shuffled = new Book(
                    "s",
                    List.of(
                            sheet("Shopping", "Salt", "25 kg"),
                            sheet("TANKS", "Litres,Tank", "90,Cube"),
                            grid("additives", shuffledColumns(additives, seed))),
                    List.of());
            Setup other = SetupReading.of(shuffled, REFERENCE);
            assertThat(other.additives())
                    .usingRecursiveFieldByFieldElementComparatorIgnoringFields("cell")
                    .isEqualTo(plain.additives());
            assertThat(other.tanks())
                    .usingRecursiveFieldByFieldElementComparatorIgnoringFields("cell")
                    .isEqualTo(plain.tanks());
        } finally {
            Locale.setDefault(before);
        }
    }

    private static List<List<String>> shuffledColumns(List<List<String>> rows, long seed) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < rows.get(0).size(); i++) {
            order.add(i);
        }
        Collections.shuffle(order, new Random(seed));
        return rows.stream().map(row -> order.stream().map(row::get).toList()).toList();
    }

    private static List<String> kinds(Setup setup) {
        return setup.issues().stream().map(Issue::kind).toList();
    }

    private static Setup read(Grid... grids) {
        return SetupReading.of(new Book("setup", List.of(grids), List.of()), REFERENCE);
    }

    private static String quoted(String text) {
        return text.replace(',', '\u0001');
    }

    /** Cells parted by semicolons where a row has one, by commas otherwise. */
    private static Grid sheet(String name, String... rows) {
        return grid(
                name,
                Arrays.stream(rows)
                        .map(r -> Arrays.stream(r.split(r.indexOf(';') >= 0 ? ";" : ",", -1))
                                .map(c -> c.replace('\u0001', ','))
                                .toList())
                        .toList());
    }

    private static Grid grid(String name, List<List<String>> rows) {
        List<Cell> cells = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            for (int c = 0; c < rows.get(r).size(); c++) {
                String text = rows.get(r).get(c);
                if (!text.isEmpty()) {
                    cells.add(Cell.of(r, c, value(text)));
                }
            }
        }
        return Grid.of(name, false, cells, List.of());
    }

    private static Value value(String text) {
        return text.matches("-?\\d+(\\.\\d+)?") ? new Value.Numeric(Double.parseDouble(text)) : new Value.Text(text);
    }
}
