package soundings.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class PhrasesTest {
    static Stream<Arguments> texts() {
        return WordingTables.rows("phrases.csv")
                .map(r -> Arguments.of(r.getField("text"), r.getField("mark"), r.getField("expected")));
    }

    @ParameterizedTest(name = "\"{0}\" says {2}")
    @MethodSource("texts")
    void a_text_says_what_the_table_says(String text, String mark, String expected) {
        List<Phrase> phrases = Phrases.read(WordingTables.spaced(text), DecimalMark.valueOf(mark), WordingTables.WORDS);

        assertThat(phrases.stream().map(PhrasesTest::shown).collect(Collectors.joining(" | ")))
                .isEqualTo(expected);
    }

    static String shown(Phrase phrase) {
        String said = phrase.said()
                .match(
                        t -> "T " + t.parameter().id() + " " + result(t.amount()),
                        r -> "R " + r.additive() + " " + AmountsTest.number(Math.round(r.mlPerDay() * 1e6) / 1e6)
                                + switch (r.told()) {
                                    case STEP -> " more";
                                    case TIMES -> " times";
                                    case AGAIN -> " again";
                                    case EITHER -> " either";
                                    case STILL -> " still";
                                    default -> "";
                                }
                                + (r.daysLater() == 0 ? "" : r.daysLater() > 0 ? " next day" : " day before")
                                + r.from()
                                        .map(f -> " from" + DatesTest.shown(f))
                                        .orElse(""),
                        o -> "O " + o.additive() + " " + AmountsTest.number(o.ml()),
                        c -> "C " + AmountsTest.shown(c.amount()) + " " + c.unit(),
                        Said.Remark::kind);
        return phrase.tank().isEmpty() ? said : said + " @" + phrase.tank();
    }

    private static String result(WrittenAmount amount) {
        return AmountsTest.shown(amount.amount())
                + (amount.unit().isEmpty() ? "" : " " + amount.unit().toLowerCase(Locale.ROOT))
                + (amount.undetected() ? " nd" : amount.approximate() ? " about" : "");
    }

    @Test
    void every_word_of_a_text_lies_in_a_phrase() {
        String text = "Fed heavily. Alk 8.2 (tired), 10 % WC and then some; new carbon, alk 30 ml x4/day! Bye";

        List<Phrase> phrases = Phrases.read(text, DecimalMark.POINT, WordingTables.WORDS);

        for (Token token : Tokens.of(Plain.of(text))) {
            boolean held = phrases.stream().anyMatch(p -> p.from() <= token.from() && token.to() <= p.to());
            assertThat(held || !token.word() && !token.number())
                    .as(token.text())
                    .isTrue();
        }
    }

    @Test
    void remarks_side_by_side_become_one_in_their_own_words() {
        List<Phrase> phrases = Phrases.read("Sunny, warm, Alk 8.2", DecimalMark.POINT, WordingTables.WORDS);

        assertThat(phrases.get(0).said()).isEqualTo(new Said.Remark("note", "Sunny, warm"));
        assertThat(phrases).hasSize(2);
    }
}
