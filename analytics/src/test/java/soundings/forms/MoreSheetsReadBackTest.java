package soundings.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.advice.Advising;
import soundings.care.Plans;
import soundings.chemistry.Part.Harm;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.estimate.Estimating;
import soundings.history.History;
import soundings.history.WrittenLog;
import soundings.reference.ReferenceTables;
import soundings.setup.Setup;
import soundings.sheet.Book;
import soundings.upkeep.Light;
import soundings.upkeep.Upkeep;

/** The sheets for treatments, moves, jobs, light and testing: filled in as they come and read by those they are for. */
class MoreSheetsReadBackTest {
    private static final Reference REFERENCE = ReferenceTables.load();
    private static final LocalDate DAY = WrittenLog.FIRST;

    private static XSSFWorkbook blank() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SetupWorkbook.blank(REFERENCE, out);
        return Written.open(out.toByteArray());
    }

    private static Map<String, Integer> columns(XSSFSheet sheet) {
        Map<String, Integer> columns = new java.util.HashMap<>();
        sheet.getRow(0).forEach(c -> columns.put(c.getStringCellValue(), c.getColumnIndex()));
        return columns;
    }

    private static void row(XSSFWorkbook workbook, String name, Map<String, Object> cells) {
        XSSFSheet sheet = workbook.getSheet(name);
        XSSFRow row = sheet.createRow(sheet.getLastRowNum() + 1);
        cells.forEach((header, value) -> {
            var cell = row.createCell(columns(sheet).get(header));
            cell.setCellStyle(sheet.getColumnStyle(cell.getColumnIndex()));
            if (value instanceof LocalDate day) {
                cell.setCellValue(day);
            } else if (value instanceof Number number) {
                cell.setCellValue(number.doubleValue());
            } else {
                cell.setCellValue(value.toString());
            }
        });
    }

    private static Book filledIn() throws IOException {
        XSSFWorkbook workbook = blank();
        row(
                workbook,
                "Treatments",
                Map.of(
                        "Tank",
                        "Cube",
                        "Animal",
                        "blenny",
                        "Medicine",
                        "vet medicine",
                        "Started",
                        DAY,
                        "Amount",
                        600,
                        "Unit",
                        "mg",
                        "Every days",
                        5,
                        "Keep at mg per litre",
                        10,
                        "Symptom-free days to end",
                        11));
        row(
                workbook,
                "Moves",
                Map.of("Animal", "blenny", "From", "Cube", "To", "Reef", "Planned on", DAY.plusDays(20)));
        row(
                workbook,
                "Jobs",
                Map.of("Tank", "Cube", "Job", "lid is cracked", "Noticed", DAY, "At risk", "animals' lives"));
        row(
                workbook,
                "Jobs",
                Map.of(
                        "Job",
                        "chiller fan",
                        "Noticed",
                        DAY,
                        "Done",
                        DAY.plusDays(3).toString()));
        row(workbook, "Light", Map.of("Place", "sand", "PAR low", 60, "PAR high", 120, "Hours a day", 10));
        row(
                workbook,
                "Tests",
                Map.of(
                        "Parameter",
                        "ph",
                        "Every days",
                        2,
                        "Price a test",
                        0.5,
                        "Kit expires",
                        DAY.plusDays(30),
                        "Wait minutes",
                        5));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        workbook.write(out);
        return Written.book(out.toByteArray());
    }

    @Test
    void a_course_and_a_move_are_read_as_they_were_entered() throws IOException {
        Plans plans = Plans.of(Optional.of(filledIn()), REFERENCE);

        assertThat(plans.issues()).isEmpty();
        assertThat(plans.treatments()).singleElement().satisfies(t -> {
            assertThat(List.of(t.tank(), t.animal(), t.medicine(), t.unit()))
                    .containsExactly("Cube", "blenny", "vet medicine", "mg");
            assertThat(t.started()).contains(DAY);
            assertThat(List.of(t.amount(), t.everyDays(), t.keepAt(), t.signFreeDays()))
                    .extracting(n -> n.orElse(-1))
                    .containsExactly(600.0, 5.0, 10.0, 11.0);
        });
        assertThat(plans.moves()).singleElement().satisfies(m -> {
            assertThat(List.of(m.animal(), m.from(), m.to())).containsExactly("blenny", "Cube", "Reef");
            assertThat(m.on()).contains(DAY.plusDays(20));
        });
    }

    @Test
    void jobs_light_and_testing_are_read_as_they_were_entered() throws IOException {
        WrittenLog written = new WrittenLog(REFERENCE)
                .tank("Cube")
                .readings(REFERENCE.parameter("ph"), 0, 4, 8.1, 8.1, 8.1, 8.1)
                .note("note", 6, "PAR 95 sand");
        History history = written.history(Setup.EMPTY);
        Estimates estimates = Estimating.of(history, REFERENCE);

        Upkeep upkeep = Upkeep.of(
                written.log(),
                history,
                estimates,
                Advising.of(history, estimates, REFERENCE),
                Optional.of(filledIn()),
                REFERENCE);

        assertThat(upkeep.issues()).isEmpty();
        assertThat(upkeep.openJobs()).singleElement().satisfies(j -> {
            assertThat(j.what()).isEqualTo("lid is cracked");
            assertThat(j.harm()).isEqualTo(Harm.LIFE);
        });
        assertThat(upkeep.paces())
                .singleElement()
                .satisfies(p -> assertThat(p.longestDays()).isEqualTo(3));
        assertThat(upkeep.lights())
                .filteredOn(l -> l.standing() == Light.Standing.WITHIN)
                .extracting(l -> l.perDay().orElseThrow())
                .containsExactly(3.42); // 95 * 10 * 3600 / 1e6
        assertThat(upkeep.testing().kits()).extracting(k -> k.expires()).containsExactly(DAY.plusDays(30));
        assertThat(upkeep.testing().costs()).extracting(c -> c.priceEach()).containsExactly(0.5);
    }

    @ParameterizedTest
    @CsvSource({
        "Treatments, Tank",
        "Treatments, Unit",
        "Moves, From",
        "Moves, To",
        "Jobs, Tank",
        "Jobs, At risk",
        "Light, Tank",
        "Tests, Parameter"
    })
    void a_choice_is_offered_as_a_list(String name, String header) throws IOException {
        XSSFWorkbook workbook = blank();
        int column = columns(workbook.getSheet(name)).get(header);

        assertThat(workbook.getSheet(name).getDataValidations()).anySatisfy(v -> {
            assertThat(v.getValidationConstraint().getValidationType()).isEqualTo(ValidationType.LIST);
            assertThat(v.getRegions().getCellRangeAddress(0).getFirstColumn()).isEqualTo(column);
        });
    }
}
