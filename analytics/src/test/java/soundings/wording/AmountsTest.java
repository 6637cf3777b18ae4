package soundings.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import soundings.quantity.Amount;
import soundings.sheet.Value;

class AmountsTest {
    static Stream<Arguments> cells() {
        return WordingTables.rows("amounts.csv")
                .map(r -> Arguments.of(r.getField("text"), r.getField("mark"), r.getField("expected")));
    }

    @ParameterizedTest(name = "{0} in a column of {1} is {2}")
    @MethodSource("cells")
    void a_cell_reads_as_the_table_says(String text, String mark, String expected) {
        AmountText read = Amounts.read(WordingTables.spaced(text), DecimalMark.valueOf(mark), WordingTables.WORDS);

        assertThat(shown(read)).isEqualTo(expected);
    }

    static String shown(AmountText text) {
        return text.match(
                w -> shown(w.amount()),
                s -> "several " + s.amounts().stream().map(AmountsTest::shown).collect(Collectors.joining(" & ")),
                s -> "steps " + shown(s.count()) + " " + s.step(),
                n -> n.ditto() ? "ditto" : "nothing",
                u -> "unreadable");
    }

    static String shown(WrittenAmount written) {
        return shown(written.amount())
                + written.otherwise().map(o -> " or=" + shown(o)).orElse("")
                + (written.unit().isEmpty() ? "" : " unit=" + written.unit().toLowerCase(java.util.Locale.ROOT))
                + (written.undetected() ? " nd" : "")
                + (written.approximate() ? " about" : "")
                + (written.marks().isEmpty() ? "" : " marks=" + written.marks())
                + (written.note().isEmpty() ? "" : " note=" + written.note());
    }

    static String shown(Amount amount) {
        return amount.match(
                e -> number(e.value()),
                b -> "<" + number(b.limit()),
                a -> ">" + number(a.limit()),
                b -> number(b.low()) + ".." + number(b.high()));
    }

    static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    @Test
    void a_number_cell_is_exact_and_a_moment_is_no_amount() {
        assertThat(shown(Amounts.read(new Value.Numeric(8.25), DecimalMark.COMMA, WordingTables.WORDS)))
                .isEqualTo("8.25");
        Value moment = new Value.Moment(46000, LocalDateTime.of(2025, 12, 9, 0, 0), Value.Shows.DATE);
        assertThat(shown(Amounts.read(moment, DecimalMark.POINT, WordingTables.WORDS)))
                .isEqualTo("unreadable");
        assertThat(shown(Amounts.read(new Value.Fault("#DIV/0!"), DecimalMark.POINT, WordingTables.WORDS)))
                .isEqualTo("unreadable");
    }

    @Test
    void the_decimal_mark_is_decided_from_what_only_one_mark_can_explain() {
        assertThat(DecimalMarks.decide(List.of("8,2", "420", "1.350", "8,05")).mark())
                .isEqualTo(DecimalMark.COMMA);
        assertThat(DecimalMarks.decide(List.of("8.2", "1,350", "7.95")).mark()).isEqualTo(DecimalMark.POINT);
        assertThat(DecimalMarks.decide(List.of("1,234.5")).mark()).isEqualTo(DecimalMark.POINT);
        assertThat(DecimalMarks.decide(List.of("12,345", "420", "1.025")).mark())
                .isEqualTo(DecimalMark.UNDECIDED);
        assertThat(DecimalMarks.decide(List.of("8,2", "8.2")).mark()).isEqualTo(DecimalMark.UNDECIDED);
        assertThat(DecimalMarks.decide(List.of()).sure()).isZero();
        assertThat(DecimalMarks.decide(List.of("03.05.2026")).mark()).isEqualTo(DecimalMark.UNDECIDED);
    }
}
