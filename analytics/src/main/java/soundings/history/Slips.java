package soundings.history;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import soundings.chemistry.Scale;
import soundings.log.Reading;

/** What a number may have been meant to be, had the fingers not slipped: the point misplaced, two digits the wrong way round. */
final class Slips {
    /** Every explanation begins with it. */
    static final String MARK = "it may be ";

    private static final int[] PLACES = {-1, 1, -2, 2};

    private Slips() {}

    /** @param meant canonical; {@code decimal} whether only the point is misplaced */
    record Slip(double meant, boolean decimal, String how) {}

    static List<Slip> of(Reading reading, double level) {
        Scale scale = reading.scale();
        double written = scale.written(level);
        List<Slip> slips = new ArrayList<>();
        for (int places : PLACES) {
            double meant = BigDecimal.valueOf(written).scaleByPowerOfTen(places).doubleValue();
            slips.add(new Slip(scale.canonical(meant), true, MARK + shown(meant) + " with the point misplaced"));
        }
        swaps(shown(written))
                .forEach(meant -> slips.add(new Slip(
                        scale.canonical(meant), false, MARK + shown(meant) + " with two digits the wrong way round")));
        return slips;
    }

    /** Every number that comes of swapping two neighbouring digits. */
    private static List<Double> swaps(String digits) {
        List<Double> swapped = new ArrayList<>();
        int last = -1;
        for (int i = 0; i < digits.length(); i++) {
            if (Character.isDigit(digits.charAt(i))) {
                if (last >= 0 && digits.charAt(i) != digits.charAt(last)) {
                    swapped.add(swapped(digits, last, i));
                }
                last = i;
            }
        }
        return swapped;
    }

    private static double swapped(String digits, int one, int other) {
        char[] chars = digits.toCharArray();
        chars[one] = digits.charAt(other);
        chars[other] = digits.charAt(one);
        return Double.parseDouble(new String(chars));
    }

    /** At most five digits that count, no exponent. */
    static String shown(double number) {
        BigDecimal rounded = new BigDecimal(number, new MathContext(5)).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }
}
