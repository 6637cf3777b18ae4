package soundings.workbook;

import java.util.OptionalDouble;

/** Numbers as files store them: decimal point, never a locale. */
final class Numbers {
    private static final double[] POWERS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };
    private static final int EXACT_DIGITS = 15;

    private Numbers() {}

    /** Empty for anything that is no finite decimal number. */
    static OptionalDouble find(String written) {
        double quick = quick(written);
        if (!Double.isNaN(quick)) {
            return OptionalDouble.of(quick);
        }
        try {
            double number = isDecimal(written) ? Double.parseDouble(written.trim()) : Double.NaN;
            return Double.isNaN(number) || Double.isInfinite(number)
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(number);
        } catch (NumberFormatException notANumber) {
            return OptionalDouble.empty();
        }
    }

    /** Keeps out what Java alone reads as a number: {@code 1d}, {@code 0x1p3}, {@code NaN}. */
    private static boolean isDecimal(String written) {
        for (int i = 0; i < written.length(); i++) {
            if ("0123456789+-.eE \t\r\n".indexOf(written.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * Up to 15 digits with at most one point: digits and power of ten are then both exact in a double, so that one division
     * rounds as it must (Clinger 1990). NaN for any other form.
     */
    private static double quick(String written) {
        int from = !written.isEmpty() && written.charAt(0) == '-' ? 1 : 0;
        if (written.length() == from || written.length() - from > EXACT_DIGITS + 1) {
            return Double.NaN;
        }
        long digits = 0;
        int count = 0;
        int point = -1;
        for (int i = from; i < written.length(); i++) {
            char c = written.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                count++;
            } else if (c == '.' && point < 0) {
                point = i;
            } else {
                return Double.NaN;
            }
        }
        if (count == 0 || count > EXACT_DIGITS) {
            return Double.NaN;
        }
        double number = point < 0 ? digits : digits / POWERS[written.length() - 1 - point];
        return from == 1 && number != 0 ? -number : number;
    }
}
