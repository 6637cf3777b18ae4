package soundings.xlsx;

import static org.assertj.core.api.Assertions.assertThatCode;

import org.junit.jupiter.api.Test;

class PreparingTest {
    @Test
    void writing_can_be_readied_ahead_with_nothing_to_write() {
        assertThatCode(XlsxReport::prepare).doesNotThrowAnyException();
    }
}
