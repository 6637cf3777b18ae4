package soundings.wording;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Decides the decimal mark from a column of texts: only numbers that one mark alone can explain are evidence. */
public final class DecimalMarks {
    private DecimalMarks() {}

    public static MarkDecision decide(List<String> texts) {
        int points = 0;
        int commas = 0;
        String example = "";
        for (String text : texts) {
            Optional<DecimalMark> tells = evidence(text);
            points += tells.filter(DecimalMark.POINT::equals).isPresent() ? 1 : 0;
            commas += tells.filter(DecimalMark.COMMA::equals).isPresent() ? 1 : 0;
            example = tells.isPresent() && example.isEmpty() ? text.strip() : example;
        }
        return decision(points, commas, example);
    }

    private static MarkDecision decision(int points, int commas, String example) {
        int all = points + commas;
        if (all == 0) {
            return new MarkDecision(DecimalMark.UNDECIDED, 0, "no number here shows which decimal mark is used");
        }
        boolean point = points >= commas;
        double share = Math.max(points, commas) / (double) all;
        String counts = points + " with a decimal point, " + commas + " with a decimal comma";
        if (share < 0.8) {
            return new MarkDecision(DecimalMark.UNDECIDED, 0, "both decimal marks are in use: " + counts);
        }
        double sure = share * all / (all + 0.1);
        return new MarkDecision(
                point ? DecimalMark.POINT : DecimalMark.COMMA, sure, counts + ", such as \"" + example + "\"");
    }

    /** The one mark that can explain the numbers of this text; empty where both or neither can. */
    public static Optional<DecimalMark> evidence(String text) {
        return Tokens.of(Plain.of(text)).stream()
                .filter(Token::number)
                .flatMap(t -> evidenceOf(t.text()).stream())
                .findFirst();
    }

    private static Optional<DecimalMark> evidenceOf(String figures) {
        OptionalDouble point = Numerals.withPoint(figures);
        OptionalDouble comma = Numerals.withComma(figures);
        if (point.isPresent() == comma.isPresent()) {
            return Optional.empty();
        }
        return Optional.of(point.isPresent() ? DecimalMark.POINT : DecimalMark.COMMA);
    }
}
