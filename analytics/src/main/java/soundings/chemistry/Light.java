package soundings.chemistry;

/** Daily light integral, mol photons a square metre and day, from PPFD (umol/m2/s) and hours of light; definitions, no fit. */
public final class Light {
    private static final double SECONDS_PER_HOUR = 3600;

    private Light() {}

    /** Lamps on at one strength. */
    public static double perDay(double ppfd, double hours) {
        return ppfd * hours * SECONDS_PER_HOUR / 1e6;
    }

    /** A day that rises and falls as half a sine, peaking at {@code ppfd}. */
    public static double perDayHalfSine(double ppfd, double hours) {
        return perDay(ppfd, hours) * 2 / Math.PI;
    }

    /** Ramping up and down in a straight line around hours at full strength. */
    public static double perDayRamped(double ppfd, double hoursUp, double hoursFull, double hoursDown) {
        return perDay(ppfd, hoursUp / 2 + hoursFull + hoursDown / 2);
    }
}
