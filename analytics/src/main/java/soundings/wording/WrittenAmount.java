package soundings.wording;

import java.util.Optional;
import soundings.quantity.Amount;

/**
 * An amount as a keeper wrote it, on the scale it was written in.
 *
 * @param amount read with the decimal mark asked for, or with the only one that can explain the text
 * @param otherwise the other reading of a text such as {@code 12,345}, present whenever the text alone allows both
 * @param unit the unit standing with the number, in a spelling the vocabulary knows where it does; empty when none stands there
 * @param approximate written with {@code ~}, {@code ?}, {@code ca.}
 * @param undetected the words say "not detected"; {@code amount} is then zero and a kit's first step is the better reading
 * @param marks footnote and other signs behind the number, such as {@code *}; a leading {@code +} too
 * @param note words behind the amount that were not understood, such as {@code (clear)}; empty almost always
 * @param figures digits written behind the decimal mark in this reading
 */
public record WrittenAmount(
        Amount amount,
        Optional<Amount> otherwise,
        String unit,
        boolean approximate,
        boolean undetected,
        String marks,
        String note,
        int figures) {

    WrittenAmount withUnit(String known, String rest) {
        return new WrittenAmount(amount, otherwise, known, approximate, undetected, marks, rest, figures);
    }

    WrittenAmount doubtful() {
        return new WrittenAmount(amount, otherwise, unit, true, undetected, marks, note, figures);
    }
}
