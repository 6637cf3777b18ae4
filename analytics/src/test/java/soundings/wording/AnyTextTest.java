package soundings.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing a cell can hold makes the readers fail, hang, or answer differently on another machine. */
class AnyTextTest {
    private static final String[] PARTS = {
        "alk",
        "Ca",
        "po4",
        "8.2",
        "1,234",
        "12/3/26",
        "ml",
        "/day",
        "x4",
        "%",
        "WC",
        "(",
        ")",
        "\"",
        "~",
        "<",
        "-",
        "to",
        "from",
        "3 May",
        "+",
        "\u00a0",
        "\n",
        "İ",
        "ß",
        "₄",
        "²",
        "\ud83d\ude00",
        "\ud83d",
        "①",
        "٣",
        "½",
        "°C",
        "dKH",
        "target",
        "stopped",
        "each,",
        "?",
        "..",
        ",",
        "'"
    };

    private static void readAll(String text) {
        for (DecimalMark mark : DecimalMark.values()) {
            Amounts.read(text, mark, WordingTables.WORDS);
            for (Phrase phrase : Phrases.read(text, mark, WordingTables.WORDS)) {
                assertThat(phrase.from()).isLessThan(phrase.to());
                assertThat(phrase.to()).isLessThanOrEqualTo(text.length());
            }
        }
        Dates.read(text);
        Dates.month(text);
        Headers.read(text, WordingTables.WORDS);
        DecimalMarks.evidence(text);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void no_text_makes_a_reader_fail(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            readAll(random.nextBoolean() ? parts(random) : characters(random));
        }
    }

    private static String parts(Random random) {
        StringBuilder text = new StringBuilder();
        for (int k = random.nextInt(12); k >= 0; k--) {
            text.append(PARTS[random.nextInt(PARTS.length)]).append(random.nextBoolean() ? " " : "");
        }
        return text.toString();
    }

    private static String characters(Random random) {
        StringBuilder text = new StringBuilder();
        for (int k = random.nextInt(20); k > 0; k--) {
            text.append((char) (random.nextInt(4) == 0 ? random.nextInt(0x10000) : 32 + random.nextInt(95)));
        }
        return text.toString();
    }

    @ParameterizedTest(name = "{0} repeated")
    @ValueSource(
            strings = {
                "1",
                "1.",
                "1,000",
                "1 000 ",
                "a",
                "alk ",
                "alk 8.2 ",
                "alk 8.2 and ",
                "alk and ",
                "from ",
                "((",
                "\"",
                "~",
                "- ",
                "1/",
                "pump 1 ",
                "30 ml x",
                "each, ",
                "Lagoon: ",
                "WC ",
                "3 May ",
                "-",
                "ca. ",
                "target ",
                "no3-n/",
                "\ud83d\ude00"
            })
    void a_long_text_is_read_in_bounded_time(String part) {
        String text = part.repeat(10_000 / part.length());

        org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(Duration.ofSeconds(10), () -> readAll(text));
    }

    @Test
    void the_language_of_the_machine_changes_nothing() {
        Locale before = Locale.getDefault();
        List<String> shown = new ArrayList<>();
        try {
            for (String tag : new String[] {"en", "de", "tr", "ar"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                shown.add(Phrases.read("IODINE 0.06 MG/L, ALK 8,2 DKH, WC 10 %", DecimalMark.POINT, WordingTables.WORDS)
                                .toString()
                        + Headers.read("SALINITY (PPT)", WordingTables.WORDS)
                        + Amounts.read("1,234.5 DKH", DecimalMark.POINT, WordingTables.WORDS)
                        + Dates.read("3 APRIL 2026"));
            }
        } finally {
            Locale.setDefault(before);
        }
        assertThat(shown).allMatch(shown.get(0)::equals);
        assertThat(shown.get(0)).contains("iodine").contains("salinity");
    }
}
