package soundings.chemistry;

import soundings.quantity.Interval;
import soundings.quantity.Normal;

/** What building calcium carbonate takes from the water: two equivalents of alkalinity a mol; and what a tank's ratio tells of it. */
public final class Calcification {
    /** mmol of carbonate in 1 dKH (10 mg CaO a litre), and atomic weights; IUPAC 2021. */
    private static final double MMOL_PER_DKH = 10 / 56.077;

    private static final double CALCIUM = 40.078;
    private static final double MAGNESIUM = 24.305;
    private static final double STRONTIUM = 87.62;

    /** How far a kit in good order may pull the ratio; common practice, no source. */
    private static final double TOLERANCE = 0.2;

    private Calcification() {}

    /** mg/L calcium per dKH of pure CaCO3: 7.147. */
    public static double calciumPerDkh() {
        return calciumPerDkh(0);
    }

    /** mg/L calcium per dKH when a share of the carbonate is magnesium's; 0.004 in coral aragonite, to 0.15 in coralline algae. */
    public static double calciumPerDkh(double magnesiumShare) {
        return MMOL_PER_DKH * (1 - magnesiumShare) * CALCIUM;
    }

    /** mg/L magnesium per dKH. */
    public static double magnesiumPerDkh(double magnesiumShare) {
        return MMOL_PER_DKH * magnesiumShare * MAGNESIUM;
    }

    /** mg/L strontium per dKH; coral aragonite holds 0.00884 mol a mol of calcium (JCp-1, Hathorne et al. 2013). */
    public static double strontiumPerDkh(double molPerMolCalcium) {
        return MMOL_PER_DKH * molPerMolCalcium * STRONTIUM;
    }

    /** What the ratio says. */
    public enum Verdict {
        GROWTH("calcium and alkalinity are used as growing skeletons use them"),
        ALKALINITY_GOES_ELSEWHERE(
                "more alkalinity is used than growth explains: acid from nitrification, or a test that is off"),
        CALCIUM_GOES_ELSEWHERE(
                "more calcium is used than growth explains: alkalinity from another source, or a test that is off"),
        CANNOT_TELL("the uses are not known well enough to tell growth from another sink");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * @param ratio mg/L calcium per dKH, 90 %
     * @param probability of the verdict, 0 to 1; of the likeliest one where it cannot tell
     */
    public record Finding(Interval ratio, Verdict verdict, double probability) {}

    /**
     * Reads the ratio of calcium use to alkalinity use against 7.15 mg/L per dKH, within a fifth for kits. Told only at 90 %, and only
     * where both uses are above nothing for certain.
     *
     * @param alkalinityUse dKH a day, and calcium mg/L a day, positive when used up
     */
    public static Finding judge(Interval alkalinityUse, Interval calciumUse) {
        if (alkalinityUse.low() <= 0 || calciumUse.low() <= 0) {
            double ratio = alkalinityUse.mid() > 0 ? Math.max(0, calciumUse.mid() / alkalinityUse.mid()) : 0;
            return new Finding(new Interval(ratio, 0, Math.max(ratio, 1000)), Verdict.CANNOT_TELL, 0);
        }
        double log = Math.log(calciumUse.mid() / alkalinityUse.mid());
        double sd = Math.hypot(logSd(alkalinityUse), logSd(calciumUse));
        Interval logs = Interval.normal(log, sd);
        Interval ratio = new Interval(Math.exp(log), Math.exp(logs.low()), Math.exp(logs.high()));
        return finding(ratio, below(1 - TOLERANCE, log, sd), 1 - below(1 + TOLERANCE, log, sd));
    }

    /** Use of an ion for each dKH used, 90 %; of an alkalinity use that is above nothing for certain. */
    public static Interval ratio(Interval alkalinityUse, Interval use) {
        double mid = use.mid() / alkalinityUse.mid();
        double reach = Math.abs(mid) * (alkalinityUse.high() - alkalinityUse.low()) / 2 / alkalinityUse.mid();
        double down = Math.hypot((use.mid() - use.low()) / alkalinityUse.mid(), reach);
        double up = Math.hypot((use.high() - use.mid()) / alkalinityUse.mid(), reach);
        return new Interval(mid, mid - down, mid + up);
    }

    private static Finding finding(Interval ratio, double low, double high) {
        double growth = Math.max(0, 1 - low - high);
        double most = Math.max(growth, Math.max(low, high));
        if (most < 0.9) {
            return new Finding(ratio, Verdict.CANNOT_TELL, most);
        }
        Verdict other = most == low ? Verdict.ALKALINITY_GOES_ELSEWHERE : Verdict.CALCIUM_GOES_ELSEWHERE;
        return new Finding(ratio, most == growth ? Verdict.GROWTH : other, most);
    }

    /** Spread of the logarithm, from a 90 % interval above zero. */
    private static double logSd(Interval use) {
        return Math.log(use.high() / use.low()) / (2 * 1.6448536269514722);
    }

    private static double below(double timesGrowth, double log, double sd) {
        double z = (Math.log(timesGrowth * calciumPerDkh()) - log) / Math.max(sd, 1e-9);
        return Normal.below(z);
    }
}
