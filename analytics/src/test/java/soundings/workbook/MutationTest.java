package soundings.workbook;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Good files with bytes changed, cut out or repeated: read or refused, never anything else, and never for long. */
class MutationTest {
    private static final int FILES_A_SEED = 25;
    private static final String[] SPICE = {
        "99999999999", "-1", "'", "<", "&#0;", "&x;", "</c>", "<!DOCTYPE a>", "\0", "é", "1e999", "NaN", ";", "\"", "\n"
    };

    @TempDir
    Path folder;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_mutated_file_is_read_or_refused(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < FILES_A_SEED; i++) {
            survives("log.xlsx", Made.zip(mutated(xlsx(), random)));
            survives("log.ods", Made.zip(mutated(ods(), random)));
            survives("log.csv", mutated(csv(), random).getBytes(i % 2 == 0 ? UTF_8 : ISO_8859_1));
            survives(
                    "cut.xlsx",
                    mutated(new String(Made.zip(xlsx()), ISO_8859_1), random).getBytes(ISO_8859_1));
        }
    }

    /** The old binary format has no text to mangle: its bytes are changed, cut and doubled. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void a_mutated_binary_workbook_is_read_or_refused(long seed) {
        byte[] whole = Made.xls(workbook -> {
            Sheet sheet = workbook.createSheet("Log");
            for (int r = 0; r < 12; r++) {
                sheet.createRow(r).createCell(0).setCellValue(r == 0 ? "Alk" : "8." + r);
                sheet.getRow(r).createCell(1).setCellValue(46_000 + r);
            }
            sheet.addMergedRegion(new CellRangeAddress(0, 0, 2, 4));
        });
        Random random = new Random(seed);
        for (int i = 0; i < FILES_A_SEED; i++) {
            byte[] bytes = whole.clone();
            for (int k = random.nextInt(8); k >= 0; k--) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            survives("log.xls", random.nextInt(4) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes);
        }
    }

    private void survives(String name, byte[] bytes) {
        Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(10),
                () -> assertThatCode(() -> {
                            try {
                                Made.read(folder, name, bytes);
                            } catch (UnreadableWorkbook refused) {
                                org.assertj.core.api.Assertions.assertThat(refused)
                                        .hasMessageContaining(name);
                            }
                        })
                        .doesNotThrowAnyException());
    }

    private static Map<String, String> mutated(Map<String, String> parts, Random random) {
        Map<String, String> mutated = new LinkedHashMap<>(parts);
        String[] names = parts.keySet().toArray(new String[0]);
        String name = names[random.nextInt(names.length)];
        mutated.put(name, mutated(parts.getOrDefault(name, ""), random));
        return mutated;
    }

    private static String mutated(String text, Random random) {
        StringBuilder changed = new StringBuilder(text);
        for (int i = 0; i <= random.nextInt(4); i++) {
            int at = random.nextInt(changed.length());
            int to = Math.min(changed.length(), at + random.nextInt(12));
            switch (random.nextInt(4)) {
                case 0 -> changed.insert(at, SPICE[random.nextInt(SPICE.length)]);
                case 1 -> changed.delete(at, to);
                case 2 -> changed.insert(at, changed.substring(at, to).repeat(1 + random.nextInt(30)));
                default -> changed.setCharAt(at, (char) random.nextInt(256));
            }
            changed.append(' ');
        }
        return changed.toString();
    }

    private static Map<String, String> xlsx() {
        return Made.parts(
                "<cols><col min='2' max='3' hidden='1'/></cols><sheetData><row r='1'><c r='A1' t='s'><v>0</v></c><c r='B1' s='1'><v>45019.5</v></c></row>"
                        + "<row r='2' hidden='1'><c r='A2' t='inlineStr'><is><t>8,2</t></is></c><c r='B2'><f>1/0</f><v>8.2</v></c><c t='e'><v>#N/A</v></c></row></sheetData>"
                        + "<mergeCells><mergeCell ref='A1:C1'/></mergeCells>",
                "xl/sharedStrings.xml",
                "<sst><si><r><t>Al</t></r><r><t>k_x000D_</t></r></si></sst>",
                "xl/styles.xml",
                "<styleSheet><numFmts><numFmt numFmtId='170' formatCode='dd/mm/yy'/></numFmts><fonts><font><b/></font></fonts><cellXfs><xf/><xf numFmtId='170'/></cellXfs></styleSheet>");
    }

    private static Map<String, String> ods() {
        return OdsReaderTest.parts(
                "<number:date-style style:name='N1'><number:day/><number:month/></number:date-style><style:style style:name='c' style:family='table-cell' style:data-style-name='N1'/>",
                "<table:table-column table:number-columns-repeated='3' table:visibility='collapse'/><table:table-row table:number-rows-repeated='3'>"
                        + "<table:table-cell table:style-name='c' office:value-type='date' office:date-value='2023-04-03'><text:p>x</text:p></table:table-cell>"
                        + "<table:table-cell table:number-columns-repeated='2' office:value-type='float' office:value='8.2'/></table:table-row>");
    }

    private static String csv() {
        return "date;KH;note\n01/02/2023;8,2;\"new; lamp\"\n03/02/2023;8,1;\n05/02/2023;\"8,4\";\"said \"\"ok\"\"\"\n"
                .repeat(5);
    }
}
