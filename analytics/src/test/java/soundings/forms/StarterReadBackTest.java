package soundings.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soundings.advice.Advising;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.estimate.Estimating;
import soundings.history.Histories;
import soundings.history.History;
import soundings.layout.Layouts;
import soundings.log.DoseRate;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.log.Remark;
import soundings.log.WaterChange;
import soundings.quantity.Amount;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.setup.SetupReading;
import soundings.upkeep.Upkeep;
import soundings.workbook.WorkbookReader;

/** A blank log, filled in the way its prompts ask, is read without a guess. */
class StarterReadBackTest {
    private static final Reference REFERENCE = ReferenceTables.load();
    private static final LocalDate FIRST = LocalDate.of(2026, 4, 3);
    private static final int DAYS = 12;

    private static final Settings SETTINGS = new Settings(LocalDate.of(2026, 5, 1), Optional.empty());

    @TempDir
    private static Path folder;

    private static Path file = Path.of("log.xlsx");
    private static Log log = new Log(List.of(), List.of(), List.of(), List.of(), List.of());

    @BeforeAll
    static void fill() throws IOException {
        ByteArrayOutputStream blank = new ByteArrayOutputStream();
        StarterWorkbook.write(REFERENCE, blank);
        file = folder.resolve("log.xlsx");
        try (XSSFWorkbook workbook = Written.open(blank.toByteArray());
                var out = Files.newOutputStream(file)) {
            enter(workbook);
            workbook.write(out);
        }
        log = Layouts.interpret(WorkbookReader.read(file, Optional.empty()), REFERENCE, Setup.EMPTY, SETTINGS);
    }

    private static void enter(XSSFWorkbook workbook) {
        add(workbook, "Tanks", "Long tank");
        add(workbook, "Tanks", "Nursery");
        for (int i = 0; i < DAYS; i++) {
            add(
                    workbook,
                    "Tests",
                    FIRST.plusDays(i),
                    "",
                    i % 2 == 0 ? "Long tank" : "Nursery",
                    25.1,
                    35,
                    8.1,
                    8.25 - i * 0.25,
                    420 + i,
                    1310,
                    i == 4 ? "<2" : 5,
                    i == 5 ? "0.03-0.06" : 0.05,
                    0.01,
                    0);
        }
        add(workbook, "Doses", FIRST, "Long tank", "alkalinity", 30);
        add(workbook, "Doses", FIRST.plusDays(6), "Long tank", "alkalinity", 36);
        add(workbook, "Doses", FIRST.plusDays(8), "Nursery", "alkalinity", 0);
        add(workbook, "Water changes", FIRST.plusDays(2), "Long tank", 10);
        add(workbook, "Water changes", FIRST.plusDays(9), "Nursery", "", 25);
        add(workbook, "Events", FIRST.plusDays(3), "Nursery", "new carbon", "50 g in the sump");
        add(workbook, "Events", FIRST.plusDays(5), "Long tank", "new lamp", "same strength");
        add(workbook, "Events", FIRST.plusDays(6), "Nursery", "health check", "no spots");
        add(workbook, "Events", FIRST.plusDays(7), "Nursery", "health check", "3 spots");
        add(workbook, "Events", FIRST.plusDays(8), "Long tank", "equipment", "return pump rattles");
        add(workbook, "Events", FIRST.plusDays(9), "Long tank", "fed", "mysis");
        add(workbook, "Light", FIRST.plusDays(2), "Long tank", "left rock", 210);
        add(workbook, "Light", FIRST.plusDays(2), "Long tank", "frag rack 2", 95);
        add(workbook, "Light", FIRST.plusDays(9), "Long tank", "left rock", 230);
        add(workbook, "Laboratory", FIRST.plusDays(1), "Long tank", "iodine", 62, "\u00b5g/L", "postal laboratory");
        add(workbook, "Laboratory", FIRST.plusDays(1), "Long tank", "strontium", 8.1, "mg/L", "postal laboratory");
        add(workbook, "Laboratory", FIRST.plusDays(1), "Long tank", "copper", "<0.5", "\u00b5g/L", "postal laboratory");
    }

    private static void add(XSSFWorkbook workbook, String name, Object... values) {
        XSSFSheet sheet = workbook.getSheet(name);
        XSSFRow row = sheet.createRow(sheet.getLastRowNum() + 1);
        for (int c = 0; c < values.length; c++) {
            put(row.createCell(c), values[c]);
            row.getCell(c).setCellStyle(sheet.getColumnStyle(c));
        }
    }

    private static void put(XSSFCell cell, Object value) {
        if (value instanceof LocalDate day) {
            cell.setCellValue(day);
        } else if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (!value.equals("")) {
            cell.setCellValue(value.toString());
        }
    }

    @Test
    void every_result_is_read_with_its_tank_day_and_unit() {
        List<Reading> tests =
                readings().filter(r -> r.at().sheet().equals("Tests")).toList();

        assertThat(tests).hasSize(DAYS * 10);
        assertThat(tests)
                .filteredOn(r -> !r.parameter().id().equals("ph"))
                .allSatisfy(r -> assertThat(r.inferred()).isEmpty());
        assertThat(tests)
                .filteredOn(r -> r.parameter().id().equals("alkalinity"))
                .extracting(Reading::tank, Reading::date, r -> r.amount().about())
                .startsWith(tuple("Long tank", FIRST, 8.25), tuple("Nursery", FIRST.plusDays(1), 8.0));
        assertThat(tests)
                .filteredOn(r -> r.parameter().id().equals("nitrate"))
                .extracting(Reading::amount)
                .contains(new Amount.Below(2));
        assertThat(tests)
                .filteredOn(r -> r.parameter().id().equals("phosphate"))
                .extracting(Reading::amount)
                .contains(new Amount.Between(0.03, 0.06));
    }

    @Test
    void laboratory_results_keep_their_unit_and_their_method() {
        assertThat(readings().filter(r -> r.at().sheet().equals("Laboratory")))
                .extracting(r -> r.parameter().id(), Reading::amount, Reading::method)
                .containsExactly(
                        tuple("iodine", new Amount.Exact(0.062), "postal laboratory"),
                        tuple("strontium", new Amount.Exact(8.1), "postal laboratory"),
                        tuple("copper", new Amount.Below(0.5), "postal laboratory"));
    }

    @Test
    void dose_changes_are_read_and_zero_stops_one() {
        assertThat(entries(DoseRate.class))
                .extracting(DoseRate::tank, DoseRate::date, DoseRate::additive, DoseRate::mlPerDay)
                .containsExactly(
                        tuple("Long tank", FIRST, "alkalinity", 30.0),
                        tuple("Long tank", FIRST.plusDays(6), "alkalinity", 36.0),
                        tuple("Nursery", FIRST.plusDays(8), "alkalinity", 0.0));
    }

    @Test
    void water_changes_are_read_in_per_cent_and_in_litres() {
        assertThat(entries(WaterChange.class))
                .extracting(WaterChange::tank, WaterChange::date, WaterChange::fraction, WaterChange::litres)
                .containsExactlyInAnyOrder(
                        tuple("Long tank", FIRST.plusDays(2), OptionalDouble.of(0.1), OptionalDouble.empty()),
                        tuple("Nursery", FIRST.plusDays(9), OptionalDouble.empty(), OptionalDouble.of(25)));
    }

    @Test
    void events_are_read_with_their_kind() {
        assertThat(entries(Remark.class))
                .extracting(Remark::tank, Remark::date, Remark::kind)
                .contains(
                        tuple("Nursery", FIRST.plusDays(3), "carbon"), tuple("Long tank", FIRST.plusDays(5), "light"));
    }

    @Test
    void light_is_read_with_its_place() {
        assertThat(readings().filter(r -> r.at().sheet().equals("Light")))
                .extracting(
                        r -> r.parameter().id(),
                        Reading::tank,
                        Reading::method,
                        r -> r.amount().about())
                .containsExactly(
                        tuple("par", "Long tank", "left rock", 210.0),
                        tuple("par", "Long tank", "frag rack 2", 95.0),
                        tuple("par", "Long tank", "left rock", 230.0));
        assertThat(upkeep().lights())
                .extracting(l -> l.place() + ": " + l.last().orElseThrow().par() + ", "
                        + l.measured().size())
                .containsExactly("left rock: 230.0, 2", "frag rack 2: 95.0, 1");
    }

    @Test
    void a_job_and_what_an_animal_shows_are_found_in_the_events_and_a_choice_from_the_list_is_neither() {
        assertThat(upkeep().jobs()).extracting(soundings.upkeep.Job::what).containsExactly("return pump rattles");
        assertThat(entries(Remark.class))
                .filteredOn(r -> r.kind().equals("symptom"))
                .extracting(Remark::text)
                .containsExactly("no spots", "3 spots");
        assertThat(entries(Remark.class))
                .filteredOn(r -> r.kind().equals("feeding"))
                .isNotEmpty();
    }

    private static Upkeep upkeep() {
        History history = Histories.of(log, Setup.EMPTY, REFERENCE, SETTINGS);
        Estimates estimates = Estimating.of(history, REFERENCE);
        return Upkeep.of(
                log, history, estimates, Advising.of(history, estimates, REFERENCE), Optional.empty(), REFERENCE);
    }

    @Test
    void the_help_pinned_to_a_header_is_no_note_of_a_row() {
        assertThat(entries(Remark.class)).extracting(r -> r.at().text()).noneMatch(t -> t.startsWith("The "));
    }

    @Test
    void nothing_is_set_aside() {
        assertThat(log.tanks()).containsExactlyInAnyOrder("Long tank", "Nursery");
        assertThat(log.issues())
                .filteredOn(i -> i.severity() != Issue.Severity.NOTE)
                .isEmpty();
    }

    @Test
    void its_companion_workbook_changes_nothing_that_was_read() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SetupWorkbook.write(Optional.empty(), log, REFERENCE, out);
        Path companion = Files.write(folder.resolve("log-setup.xlsx"), out.toByteArray());

        Setup setup = SetupReading.of(WorkbookReader.read(companion, Optional.empty()), REFERENCE);
        Log again = Layouts.interpret(WorkbookReader.read(file, Optional.empty()), REFERENCE, setup, SETTINGS);

        assertThat(setup.issues()).isEmpty();
        assertThat(again.entries()).isEqualTo(log.entries());
    }

    private static Stream<Reading> readings() {
        return entries(Reading.class).stream();
    }

    private static <T> List<T> entries(Class<T> kind) {
        return log.entries().stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
