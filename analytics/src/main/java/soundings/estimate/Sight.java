package soundings.estimate;

import soundings.log.Reading;

/**
 * One reading as the filter sees it: exact where {@code low == high}, otherwise only known to lie between the two.
 *
 * @param source which kit or laboratory: 0 the main one
 * @param looseness factor on the kit's error, above 1 for a reading marked as approximate
 * @param extraVariance rounding to the kit's step, and doubt about the order of entries on the same day
 */
record Sight(Reading reading, double low, double high, int source, double looseness, double extraVariance) {
    boolean exact() {
        return low == high;
    }

    Sight with(double moreVariance) {
        return new Sight(reading, low, high, source, looseness, extraVariance + moreVariance);
    }
}
