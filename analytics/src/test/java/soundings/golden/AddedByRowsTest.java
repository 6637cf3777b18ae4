package soundings.golden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import soundings.Analysis;
import soundings.advice.Judgement;
import soundings.advice.Recommendation;
import soundings.chemistry.Reference;
import soundings.findings.Findings;
import soundings.findings.Provenance;
import soundings.html.HtmlPage;
import soundings.notebook.Notebooks;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Value;
import soundings.template.Shipped;

/** An element, a unit and a salt that the tables do not have yet, from a log's column to the report's page: rows alone, no code. */
class AddedByRowsTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 5, 4);
    private static final Map<String, String> ROWS = Map.of(
            "elements.csv", "W,tungsten,183.84,AW21",
            "parameters.csv", "tungsten,Tungsten,W,ug/L,W,2,0,50,TRACE,OBS",
            "parameter-names.csv", "tungsten,tungsten; wolfram",
            "units.csv", "mg/hL,mass,0.01,0,-,DEF",
            "scales.csv", "*,mg/hL,mg/hL,mg/hL,=,1,no,-,DEF",
            "unit-spellings.csv", "mg/hL,-,mg per hectolitre",
            "salts.csv", "Na2WO4·2H2O,sodium tungstate,0,-,metal,AW21");
    private static final Reference REFERENCE = ReferenceTables.load(AddedByRowsTest::open);
    private static final Findings FINDINGS = findings();

    @Test
    void it_is_read_estimated_judged_and_dosed() {
        Judgement judgement = FINDINGS.advice().judgements().get(0);
        Recommendation dose = FINDINGS.advice().recommendations().get(0);
        double rise = dose.working().stream()
                .filter(w -> w.id().equals("strength"))
                .findFirst()
                .orElseThrow()
                .value();

        assertThat(judgement.parameter().id()).isEqualTo("tungsten");
        // 0.05 g of the salt (329.846 g/mol, IUPAC 2021 weights) in 1 L: 1 mL in 1 L raises tungsten by so many ug/L.
        assertThat(rise).isCloseTo(50_000 * 183.84 / 329.846 / 1000, within(0.001));
        double use = FINDINGS.estimates()
                .outcomes()
                .get(0)
                .<Double>match(e -> e.use().orElseThrow().mid(), n -> Double.NaN);
        assertThat(use).isCloseTo(3 * rise / 100 + 0.05, within(0.02));
    }

    @Test
    void the_report_shows_it_in_the_new_unit_with_its_caution_and_its_cells() {
        String page = Jsoup.parse(HtmlPage.of(Notebooks.run(Shipped.named("monthly"), FINDINGS)))
                .text();

        assertThat(page)
                .contains("Tungsten")
                .contains("mg/hL")
                .contains("Log!B2:B22")
                .contains("Tungsten is high")
                .contains("Watch the animals meanwhile");
    }

    /** Ten parts fall from 8 to 6 ug/L in forty days, with 3 mL a day into 100 L. */
    private static Findings findings() {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"Date", "Wolfram (mg per hectolitre)", "tungstate ml/day"});
        for (int i = 0; i <= 20; i++) {
            String level = String.format(Locale.ROOT, "%.2f", 0.80 - 0.01 * i);
            rows.add(new String[] {FIRST.plusDays(2L * i).toString(), level, i == 0 ? "3" : ""});
        }
        Book log = new Book("log", List.of(grid("Log", rows)), List.of());
        Book setup = new Book(
                "setup",
                List.of(
                        grid("Tanks", List.of(new String[] {"Tank", "Litres"}, new String[] {"Log", "100"})),
                        grid("Additives", List.of(new String[] {"Additive", "Parameter", "Recipe"}, new String[] {
                            "tungstate", "Wolfram", "0.05 g sodium tungstate in 1 L"
                        })),
                        grid("Targets", List.of(new String[] {"Parameter", "Low", "High", "Unit"}, new String[] {
                            "tungsten", "1", "3", "ug/L"
                        }))),
                List.of());
        return Analysis.of(
                log,
                Optional.of(setup),
                new Provenance("log.xlsx", "0".repeat(64), "log-setup.xlsx", "", "1.0.0"),
                REFERENCE,
                new Settings(FIRST.plusDays(45), Optional.empty()));
    }

    static Grid grid(String name, List<String[]> rows) {
        List<Cell> cells = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).length; column++) {
                if (!rows.get(row)[column].isEmpty()) {
                    cells.add(Cell.of(row, column, new Value.Text(rows.get(row)[column])));
                }
            }
        }
        return Grid.of(name, false, cells, List.of());
    }

    private static Reader open(String file) {
        try (BufferedReader lines = new BufferedReader(ReferenceTables.packaged(file))) {
            return new StringReader(
                    lines.lines().collect(Collectors.joining("\n")) + "\n" + ROWS.getOrDefault(file, "") + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
