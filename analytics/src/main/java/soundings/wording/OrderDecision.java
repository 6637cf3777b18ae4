package soundings.wording;

import java.util.Optional;

/**
 * In which order the dates of a block were written.
 *
 * @param order empty when the texts do not tell; both orders then have to be tried
 * @param sure 0 to 1; zero when undecided
 * @param because the evidence as a sentence
 * @param realDatesFlipped the cells that are real dates had their day and month changed over when they were typed in
 */
public record OrderDecision(Optional<DateOrder> order, double sure, String because, boolean realDatesFlipped) {
    static OrderDecision decided(DateOrder order, double sure, String because) {
        return new OrderDecision(Optional.of(order), sure, because, false);
    }

    static OrderDecision undecided(String because) {
        return new OrderDecision(Optional.empty(), 0, because, false);
    }
}
