package soundings.workbook;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static soundings.workbook.Made.shown;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Value;

class CsvReadingTest {
    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    @TempDir
    Path folder;

    private String read(String text) {
        return shown(Made.text(folder, text, UTF_8));
    }

    @Test
    void every_field_stays_the_text_it_is() {
        Book book = Made.text(folder, "date;KH\n01/02/03;8,2\n02/02/03;007\n", UTF_8);

        assertThat(book.grids().get(0).cells()).extracting(Cell::value).allMatch(Value.Text.class::isInstance);
        assertThat(shown(book)).isEqualTo("A1=[date] B1=[KH] A2=[01/02/03] B2=[8,2] A3=[02/02/03] B3=[007]");
    }

    @ParameterizedTest
    @ValueSource(strings = {";", "\t", "|"})
    void a_decimal_comma_does_not_separate_fields(String separator) {
        String text =
                "date;KH;Ca\n03/04/2023;7,9;420\n05/04/2023;8,1;415\n07/04/2023;8,0;425\n".replace(";", separator);

        assertThat(read(text))
                .startsWith("A1=[date] B1=[KH] C1=[Ca] A2=[03/04/2023] B2=[7,9] C2=[420]")
                .contains("C4=[425]");
    }

    @Test
    void commas_separate_fields_with_quoted_commas_inside() {
        assertThat(read("date,note,KH\n2023-04-03,\"new lamp, brighter\",7.9\n2023-04-05,\"said \"\"wow\"\"\",8.1\n"))
                .contains("B2=[new lamp, brighter]", "C2=[7.9]", "B3=[said \"wow\"]");
    }

    @Test
    void a_lone_quotation_mark_means_the_same_as_above() {
        assertThat(read("date;KH;Ca\n03/04/2023;7,9;420\n05/04/2023;\";\"\n07/04/2023;8,0;425\n08/04/2023;8,0;425\n"))
                .contains("B3=[\"]", "C3=[\"]", "A4=[07/04/2023]");
    }

    @Test
    void a_quoted_field_may_hold_several_lines() {
        assertThat(read("date;note;KH\n03/04/2023;\"one\ntwo\";7,9\n05/04/2023;;8,1\n"))
                .contains("B2=[one\ntwo]", "C3=[8,1]");
    }

    @Test
    void blank_lines_keep_the_rows_below_in_their_place() {
        assertThat(read("Reef log\n\ndate;KH\n03/04/2023;7,9\n"))
                .isEqualTo("A1=[Reef log] A3=[date] B3=[KH] A4=[03/04/2023] B4=[7,9]");
    }

    @Test
    void a_first_line_that_names_the_separator_is_believed() {
        assertThat(read("sep=,\ndate,KH\n03/04/2023,8.1\n")).isEqualTo("A2=[date] B2=[KH] A3=[03/04/2023] B3=[8.1]");
    }

    @Test
    void a_diary_of_one_column_is_one_column() {
        assertThat(read("03/04/2023 Alk 8.2, Ca 420, all well\nnothing today\n05/04/2023 Alk 8.1, Ca 420, Mg 1350\n"))
                .contains("A1=[03/04/2023 Alk 8.2, Ca 420, all well]");
    }

    static Stream<Arguments> encodings() {
        String sample = "Tag;Temp °C;µg/L\n03.04.2023;25,3;1\u00A0350\n";
        return Stream.of(
                arguments("UTF-8", sample.getBytes(UTF_8)),
                arguments("UTF-8 with mark", ("\uFEFF" + sample).getBytes(UTF_8)),
                arguments("UTF-16LE with mark", ("\uFEFF" + sample).getBytes(UTF_16LE)),
                arguments("UTF-16BE with mark", ("\uFEFF" + sample).getBytes(UTF_16BE)),
                arguments("UTF-16LE", sample.getBytes(UTF_16LE)),
                arguments("UTF-16BE", sample.getBytes(UTF_16BE)),
                arguments("Windows-1252", sample.getBytes(WINDOWS_1252)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("encodings")
    void the_text_survives_its_encoding(String encoding, byte[] bytes) {
        assertThat(shown(Made.read(folder, "log.csv", bytes)))
                .isEqualTo("A1=[Tag] B1=[Temp °C] C1=[µg/L] A2=[03.04.2023] B2=[25,3] C2=[1\u00A0350]");
    }
}
