package soundings.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.log.AsWritten;
import soundings.log.BlockReading;
import soundings.log.ColumnReading;
import soundings.log.DoseRate;
import soundings.log.Inferred;
import soundings.log.Log;
import soundings.log.LogEntry;
import soundings.log.Reading;
import soundings.quantity.Amount;
import soundings.setup.Setup;
import soundings.setup.SetupReading;
import soundings.setup.SmallReference;
import soundings.sheet.CellRef;

class SetupWorkbookTest {
    private static final Reference REFERENCE = SmallReference.load();
    private static final LocalDate DAY = LocalDate.of(2026, 4, 3);

    @TempDir
    Path folder;

    @Test
    void a_new_one_has_every_sheet_and_every_column_of_the_contract() throws IOException {
        XSSFWorkbook written = Written.open(write(Optional.empty(), log("Long tank")));

        assertThat(header(written, "Tanks")).startsWith("Tank", "Litres", "Written as", "Since");
        assertThat(header(written, "Fresh mix")).startsWith("Tank", "Parameter", "Value", "Unit");
        assertThat(header(written, "Targets")).startsWith("Tank", "Parameter", "Low", "High", "Unit");
        assertThat(header(written, "Additives"))
                .startsWith(
                        "Additive",
                        "Written as",
                        "Parameter",
                        "Rise",
                        "Unit",
                        "Of mL",
                        "In litres",
                        "Recipe",
                        "Max rise a day");
        assertThat(header(written, "Kits"))
                .startsWith("Parameter", "Kit", "Step", "Error", "Unit", "From", "Reference true", "Reference read");
        assertThat(header(written, "Pumps"))
                .startsWith(
                        "Tank", "Additive", "Doses a day", "Container mL", "Filled on", "Commanded mL", "Measured mL");
        assertThat(header(written, "Columns")).startsWith("Sheet", "Block", "Header", "Meaning", "Unit", "Tank", "Use");
        assertThat(header(written, "Preferences")).startsWith("Name", "Value");
    }

    @Test
    void what_it_fills_in_is_read_back_without_an_issue() throws IOException {
        Setup setup = SetupReading.of(Written.book(write(Optional.empty(), log("Long tank", "Nursery"))), REFERENCE);

        assertThat(setup.issues()).isEmpty();
        assertThat(setup.tanks()).extracting(Setup.Tank::name).containsExactly("Long tank", "Nursery");
        assertThat(setup.tanks()).allSatisfy(t -> assertThat(t.litres()).isEmpty());
        assertThat(setup.targets()).isEmpty();
        assertThat(setup.pumps()).extracting(Setup.Pump::additive).contains("KH", "green bottle");
        assertThat(setup.preferences()).isEmpty();
    }

    @Test
    void a_strength_is_never_filled_in_and_a_test_only_where_the_additive_bears_its_name() throws IOException {
        Setup setup = SetupReading.of(Written.book(write(Optional.empty(), log("Long tank"))), REFERENCE);

        assertThat(setup.additives())
                .singleElement()
                .satisfies(a -> assertThat(a.parameter().id()).isEqualTo("alkalinity"))
                .satisfies(a -> assertThat(a.risePerMlInOneLitre()).isEmpty());
    }

    @Test
    void how_a_column_was_read_stands_beside_it_and_nothing_binds_before_the_keeper_writes() throws IOException {
        Setup setup = SetupReading.of(Written.book(write(Optional.empty(), log("Long tank"))), REFERENCE);

        assertThat(setup.columns())
                .containsExactly(
                        new Setup.Column("Tests", "A1:C9", "KH dKH", "", "", "", Optional.empty()),
                        new Setup.Column("Tests", "A1:C9", "Ca", "", "", "", Optional.empty()));
        assertThat(shown(Written.open(write(Optional.empty(), log("Long tank"))), "Columns", 2, "As read"))
                .isEqualTo("calcium in mg/L, Long tank; unit worked out; 8 cells; 2026-04-03 to 2026-04-10");
    }

    @Test
    void what_a_keeper_entered_stays_and_only_what_is_new_is_added() throws IOException {
        Path file = save(write(Optional.empty(), log("Long tank")), workbook -> {
            set(workbook, "Tanks", 1, "Litres", "80 US gal");
            set(workbook, "Tanks", 1, "Written as", "lt; big one");
            set(workbook, "Targets", 1, "Low", "8");
            workbook.getSheet("Tanks").getRow(0).createCell(9).setCellValue("My own column");
            workbook.getSheet("Tanks").getRow(1).createCell(9).setCellValue("my own words");
            workbook.createSheet("Shopping").createRow(0).createCell(0).setCellValue("salt");
        });

        XSSFWorkbook again = Written.open(write(Optional.of(file), log("Long tank", "Nursery", "Big One")));

        assertThat(shown(again, "Tanks", 1, "Litres")).isEqualTo("80 US gal");
        assertThat(shown(again, "Tanks", 1, "My own column")).isEqualTo("my own words");
        assertThat(shown(again, "Tanks", 2, "Tank")).isEqualTo("Nursery");
        assertThat(again.getSheet("Tanks").getLastRowNum()).isEqualTo(2);
        assertThat(shown(again, "Targets", 1, "Low")).isEqualTo("8");
        assertThat(again.getSheet("Shopping").getRow(0).getCell(0).getStringCellValue())
                .isEqualTo("salt");
    }

    @Test
    void written_twice_it_does_not_grow() throws IOException {
        byte[] once = write(Optional.empty(), log("Long tank"));
        Path file = Files.write(folder.resolve("once.xlsx"), once);

        byte[] twice = write(Optional.of(file), log("Long tank"));

        assertThat(Written.book(twice)).usingRecursiveComparison().isEqualTo(Written.book(once));
        assertThat(Written.open(twice).getSheet("Tanks").getDataValidations())
                .hasSameSizeAs(Written.open(once).getSheet("Tanks").getDataValidations());
    }

    @Test
    void columns_in_another_order_and_sheets_in_another_case_are_found() throws IOException {
        Path file = save(new byte[0], workbook -> {
            XSSFSheet tanks = workbook.createSheet("tanks");
            tanks.createRow(0).createCell(0).setCellValue("litres");
            tanks.getRow(0).createCell(1).setCellValue("TANK");
            tanks.createRow(1).createCell(0).setCellValue(90);
            tanks.getRow(1).createCell(1).setCellValue("long tank");
        });

        Setup setup = SetupReading.of(Written.book(write(Optional.of(file), log("Long tank", "Nursery"))), REFERENCE);

        assertThat(setup.tanks()).extracting(Setup.Tank::name).containsExactly("long tank", "Nursery");
        assertThat(setup.tanks().get(0).litres()).isEqualTo(OptionalDouble.of(90));
    }

    @Test
    void the_same_log_gives_the_same_bytes() throws IOException {
        assertThat(write(Optional.empty(), log("Long tank"))).isEqualTo(write(Optional.empty(), log("Long tank")));
    }

    @Test
    void a_name_that_looks_like_a_formula_stays_a_name() throws IOException {
        XSSFWorkbook written = Written.open(write(Optional.empty(), log("=HYPERLINK(\"x\")")));

        assertThat(written.getSheet("Tanks").getRow(1).getCell(0).getStringCellValue())
                .isEqualTo("=HYPERLINK(\"x\")");
        assertThat(written.getSheet("Tanks").getRow(1).getCell(0).getCellStyle().getQuotePrefixed())
                .isTrue();
    }

    @Test
    void the_units_offered_are_those_of_the_row_s_test() throws IOException {
        XSSFWorkbook written = Written.open(write(Optional.empty(), log("Long tank")));

        assertThat(written.getSheet("Targets").getDataValidations())
                .extracting(v -> v.getValidationConstraint().getFormula1())
                .anySatisfy(f -> assertThat(f).contains("MATCH($B2,'Lists (Soundings)'!$B$1:$B$1000,0)"));
    }

    @Test
    void a_file_that_is_no_workbook_is_refused_and_named() throws IOException {
        Path file = Files.write(folder.resolve("notes.xlsx"), "no workbook".getBytes(StandardCharsets.UTF_8));

        assertThatThrownBy(() -> write(Optional.of(file), log("Long tank")))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("notes.xlsx");
    }

    private static byte[] write(Optional<Path> existing, Log log) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SetupWorkbook.write(existing, log, REFERENCE, out);
        return out.toByteArray();
    }

    private Path save(byte[] start, java.util.function.Consumer<XSSFWorkbook> change) throws IOException {
        Path file = folder.resolve("entered.xlsx");
        try (XSSFWorkbook workbook = start.length == 0 ? new XSSFWorkbook() : Written.open(start);
                var out = Files.newOutputStream(file)) {
            change.accept(workbook);
            workbook.write(out);
        }
        return file;
    }

    private static Log log(String... tanks) {
        List<LogEntry> entries = List.of(
                reading(tanks[0], SmallReference.ALKALINITY, 8.2),
                reading(tanks[0], SmallReference.CALCIUM, 420),
                new DoseRate(tanks[0], DAY, "KH", 30, at("D2", "30")),
                new DoseRate(tanks[0], DAY, "green bottle", 5, at("E2", "5")));
        return new Log(List.of(tanks), entries, List.of(block(tanks[0])), List.of(), List.of());
    }

    private static LogEntry reading(String tank, Parameter parameter, double value) {
        return new Reading(
                tank,
                DAY,
                Optional.empty(),
                parameter,
                new Amount.Exact(value),
                REFERENCE.canonicalScale(parameter),
                Set.of(),
                "",
                false,
                "",
                at("B2", String.valueOf(value)));
    }

    private static AsWritten at(String cell, String text) {
        return new AsWritten("Tests", CellRef.parse(cell), text);
    }

    private static BlockReading block(String tank) {
        return new BlockReading(
                "Tests",
                "A1:C9",
                "wide",
                0.9,
                "",
                List.of(
                        column("KH dKH", "alkalinity", "dKH", tank, Set.of()),
                        column("Ca", "calcium", "mg/L", tank, Set.of(Inferred.UNIT))));
    }

    private static ColumnReading column(
            String header, String meaning, String unit, String tank, Set<Inferred> inferred) {
        return new ColumnReading(
                header,
                "B1",
                meaning,
                unit,
                tank,
                inferred,
                0.9,
                List.of("8.2"),
                8,
                Optional.of(DAY),
                Optional.of(DAY.plusDays(7)));
    }

    private static List<String> header(XSSFWorkbook workbook, String sheet) {
        List<String> names = new java.util.ArrayList<>();
        workbook.getSheet(sheet).getRow(0).forEach(c -> names.add(c.getStringCellValue()));
        return names;
    }

    private static String shown(XSSFWorkbook workbook, String sheet, int row, String header) {
        return workbook.getSheet(sheet)
                .getRow(row)
                .getCell(column(workbook, sheet, header))
                .getStringCellValue();
    }

    private static void set(XSSFWorkbook workbook, String sheet, int row, String header, String text) {
        workbook.getSheet(sheet)
                .getRow(row)
                .createCell(column(workbook, sheet, header))
                .setCellValue(text);
    }

    private static int column(XSSFWorkbook workbook, String sheet, String header) {
        for (var cell : workbook.getSheet(sheet).getRow(0)) {
            if (cell.getStringCellValue().equals(header)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError(header);
    }
}
