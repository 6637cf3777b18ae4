package soundings.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code inspect} prints. */
class InspectionTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int inspect(String name, String text) throws IOException {
        Path log = Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), CLOCK, "inspect", log.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Dear Ms Larch,\n\nthank you for your letter of 3 May 2026. We lost 20 litres, and added 5 ml of mix.\n",
                "int count = 0;\nfor (int to = from; to > from; to--) {\n  count += to;\n}\n// dose 5 ml/day, alk 8\n",
                "Item,Price,Shop\nSalt 20 kg,59.90,market\nCarbon,12.00,market\n"
            })
    void a_file_that_is_no_log_is_said_to_be_none(String text) throws IOException {
        assertThat(inspect("thing.csv", text)).isEqualTo(1);
        assertThat(err.toString()).startsWith("thing.csv: this is no log");
        assertThat(out.toString()).contains("no log (").doesNotContain("no log (50 %");
    }

    @Test
    void units_are_printed_as_they_are_written_and_dates_from_the_first_to_the_last() throws IOException {
        assertThat(inspect("reef.csv", "Date,Temp F,Temp C,Notes\n2026-05-14,78,,new lamp\n2026-05-16,77,,\n"))
                .isZero();
        assertThat(out.toString())
                .containsPattern("A1 +Date +date +95 % +2 +2026-05-14 +2026-05-16")
                .containsPattern("Temp F +temperature +°F")
                .containsPattern("Temp C +temperature +°C")
                .containsPattern("Notes +note .* 1 +2026-05-14 +2026-05-14");
    }

    @Test
    void the_same_fault_in_many_cells_is_one_line_and_what_keeps_results_out_stands_first() throws IOException {
        StringBuilder log = new StringBuilder("Date,KH dKH,Who\n");
        for (int day = 1; day <= 9; day++) {
            log.append("2026-05-0").append(day).append(",8.").append(day).append(" or 9.1,x\n");
        }
        log.append("2026-05-10,8.1,x\n");

        assertThat(inspect("reef.csv", log.toString())).isZero();
        assertThat(out.toString().lines().filter(l -> l.contains("more than one number stands here")))
                .singleElement()
                .asString()
                .contains("B2 '8.1 or 9.1', ", "and 5 more: ");
    }

    @Test
    void a_log_that_is_not_begun_yet_is_told_in_a_few_lines() {
        String starter = folder.resolve("new.xlsx").toString();
        Main.run(new PrintWriter(out, true), new PrintWriter(err, true), CLOCK, "starter", starter);
        out.getBuffer().setLength(0);
        Main.run(new PrintWriter(out, true), new PrintWriter(err, true), CLOCK, "inspect", starter);

        assertThat(out.toString()).contains("Its headings are understood; no row is filled in yet.");
        assertThat(out.toString().lines()).hasSizeLessThan(15);
    }
}
