package soundings.sheet;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;

/**
 * Day numbers of the two spreadsheet date systems (ISO/IEC 29500-1 §18.17.4.1). The 1900 system counts a 29 February 1900
 * that never was: serials below 61 stand one day later than simple counting from 1899-12-30 gives.
 */
public final class Serials {
    /** 9999-12-31, the last day a spreadsheet shows. */
    public static final double LAST = 2_958_465.999_999;

    private static final LocalDateTime EPOCH_1900 = LocalDateTime.of(1899, 12, 30, 0, 0);
    private static final LocalDateTime EPOCH_1904 = LocalDateTime.of(1904, 1, 1, 0, 0);
    private static final int FIRST_AFTER_GHOST = 61;
    private static final double SECONDS_A_DAY = 86_400;

    private Serials() {}

    /** Whether a day number can be shown as a date at all. */
    public static boolean isDate(double serial) {
        return serial >= 0 && serial <= LAST;
    }

    /** The moment, to the nearest second, of a day number that {@link #isDate}. */
    public static LocalDateTime moment(double serial, boolean from1904) {
        long seconds = Math.round(serial * SECONDS_A_DAY);
        if (from1904) {
            return EPOCH_1904.plusSeconds(seconds);
        }
        int ghost = serial < FIRST_AFTER_GHOST ? 1 : 0;
        return EPOCH_1900.plusDays(ghost).plusSeconds(seconds);
    }

    /** The day number of a moment in the 1900 system, or in the 1904 one. */
    public static double serial(LocalDateTime moment, boolean from1904) {
        LocalDateTime epoch = from1904 ? EPOCH_1904 : EPOCH_1900;
        double days = ChronoUnit.SECONDS.between(epoch, moment) / SECONDS_A_DAY;
        return !from1904 && days < FIRST_AFTER_GHOST ? days - 1 : days;
    }
}
