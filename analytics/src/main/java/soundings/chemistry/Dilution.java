package soundings.chemistry;

/** What water changes do to a concentration; arithmetic of mixing, any unit. */
public final class Dilution {
    private Dilution() {}

    /** After one change of a fraction of the water. */
    public static double afterChange(double before, double freshMix, double fraction) {
        return before + fraction * (freshMix - before);
    }

    /** After equal changes one after another. */
    public static double afterChanges(double before, double freshMix, double fraction, int changes) {
        return freshMix + (before - freshMix) * Math.pow(1 - fraction, changes);
    }

    /** Changes needed to leave a share of what was there, the mix holding none. */
    public static int changesToLeave(double share, double fraction) {
        return (int) Math.ceil(Math.log(share) / Math.log(1 - fraction) - 1e-12);
    }

    /** The share left after exchanging litres in a steady stream. */
    public static double leftAfterStream(double litresExchanged, double tankLitres) {
        return Math.exp(-litresExchanged / tankLitres);
    }

    /** Where a steady input ends up: the height just before each change, when every change takes a fraction and nothing else does. */
    public static double steadyBeforeChange(double inputPerPeriod, double fraction) {
        return inputPerPeriod / fraction;
    }

    /** What to give again of a medicine after a change took some out: concentration a litre times litres changed. */
    public static double giveAgain(double concentration, double fraction, double tankLitres) {
        return concentration * fraction * tankLitres;
    }
}
