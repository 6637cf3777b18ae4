package soundings.workbook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static soundings.workbook.Made.parts;
import static soundings.workbook.Made.zip;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files made to exhaust a reader. Each is refused by a limit of its own; sizes and times are measured in the benchmark. */
class HostileTest {
    @TempDir
    Path folder;

    private void refused(byte[] file, String says) {
        assertThatThrownBy(() -> Made.read(folder, "log.xlsx", file))
                .isInstanceOf(UnreadableWorkbook.class)
                .hasMessageContaining(says);
    }

    private static byte[] withSheet(String start, String filler, int times, String end) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] block = filler.repeat(1024).getBytes(UTF_8);
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.setLevel(Deflater.BEST_SPEED);
            for (Map.Entry<String, String> part : parts("").entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                if (part.getKey().contains("sheet1")) {
                    zip.write(("<worksheet>" + start).getBytes(UTF_8));
                    for (int i = 0; i < times; i++) {
                        zip.write(block);
                    }
                    zip.write((end + "</worksheet>").getBytes(UTF_8));
                } else {
                    zip.write(part.getValue().getBytes(UTF_8));
                }
            }
        }
        return out.toByteArray();
    }

    @Test
    void a_part_that_swells_without_end_is_a_bomb() throws IOException {
        refused(withSheet("", "<a></a> ", 10_000, ""), "unpacks to more than");
    }

    @Test
    void a_text_without_end_is_not_collected() throws IOException {
        refused(
                withSheet(
                        "<sheetData><row><c t='inlineStr'><is><t>",
                        "xxxxxxxx",
                        2_000,
                        "</t></is></c></row></sheetData>"),
                "a single text");
    }

    @Test
    void a_row_or_a_column_beyond_the_grid_is_refused() {
        refused(zip(parts("<sheetData><row r='2000000000'><c><v>1</v></c></row></sheetData>")), "row 2000000000");
        refused(zip(parts("<sheetData><row r='1'><c r='ZZZZZZ1'><v>1</v></c></row></sheetData>")), "column");
        refused(zip(parts("<sheetData><row r='99999999999999999999'><c><v>1</v></c></row></sheetData>")), "row");
    }

    @Test
    void merged_areas_without_end_are_refused() {
        refused(
                zip(parts("<mergeCells>" + "<mergeCell ref='A1:B1'/>".repeat(100_001) + "</mergeCells>")),
                "merged areas");
    }

    @Test
    void document_types_and_entities_are_refused() {
        Map<String, String> parts = parts("");
        parts.put(
                "xl/worksheets/sheet1.xml",
                "<!DOCTYPE a [<!ENTITY b 'bb'><!ENTITY c '&b;&b;'>]><worksheet><sheetData><row><c><v>&c;</v></c></row></sheetData></worksheet>");

        refused(zip(parts), "document type");
    }

    @Test
    void xml_nested_without_end_is_refused() {
        refused(zip(parts("<a>".repeat(5_000) + "</a>".repeat(5_000))), "nested");
    }

    @Test
    void counts_promised_but_not_kept_do_no_harm() {
        Map<String, String> parts = parts(
                "<sheetData><row><c t='s'><v>0</v></c></row></sheetData>",
                "xl/sharedStrings.xml",
                "<sst count='2000000000' uniqueCount='2000000000'><si><t>a</t></si></sst>");

        assertThat(Made.shown(Made.read(folder, "log.xlsx", zip(parts)))).isEqualTo("A1=[a]");
    }
}
