package soundings.advice;

import java.util.ArrayList;
import java.util.List;
import soundings.chemistry.Parameter;
import soundings.estimate.Estimate;
import soundings.quantity.Interval;
import soundings.setup.Setup;

/**
 * The sum a dose comes from: what is used a day, in this water, by this additive. {@code dose = use * litres / strength}.
 *
 * @param use canonical unit a day
 * @param others what other additives raise a day
 */
record Sum(Matter matter, Feed feed, Estimate estimate, Interval use, double others, Working working, Interval keeps) {

    Sum(Matter matter, Feed feed, Estimate estimate, Interval use, double others) {
        this(matter, feed, estimate, use, others, new Working());
    }

    private Sum(Matter matter, Feed feed, Estimate estimate, Interval use, double others, Working working) {
        this(matter, feed, estimate, use, others, working, keeps(matter, feed, use, others, working));
    }

    /**
     * mL a day that keep the level, never below none; the lines say how. A volume or a strength that is off does not matter to
     * a dose that keeps the level already: the use was worked out with the same two. It matters to what is changed.
     */
    private static Interval keeps(Matter matter, Feed feed, Interval use, double others, Working working) {
        String unit = matter.parameter().unit();
        String readings = String.join(", ", matter.places());
        working.given("use", "used a day, estimated from the tests", use.mid(), unit + "/d", readings);
        working.given("use_low", "used a day, low end", use.low(), unit + "/d", readings);
        working.given("use_high", "used a day, high end", use.high(), unit + "/d", readings);
        working.given("litres", "water in the tank", matter.tank().litres().orElseThrow(), "L", litresCell(matter));
        working.given(
                "strength",
                "what 1 mL does to 1 L",
                feed.row().risePerMlInOneLitre().orElseThrow(),
                unit + " L/mL",
                feed.row().cell());
        String rest = besides(feed, others, unit, working);
        String per = feed.delivered() == 1 ? "strength" : "(strength * delivered)";
        double dose = working.worked("dose", "mL a day that keep the level", "mL/d", formula("use", rest, per));
        working.given(
                "present",
                "mL a day as the pump is set",
                feed.presentMlPerDay(),
                "mL/d",
                String.join(", ", feed.places()));
        double unsure = Unsure.of(matter.history().setup(), matter.reference());
        working.given("unsure", "volume and strength together, give or take", unsure, "1", Unsure.FROM);
        String moved = dose >= feed.presentMlPerDay() ? "(dose - present)" : "(present - dose)";
        double low =
                working.worked("dose_low", "low end", "mL/d", formula("use_low", rest, per) + " - unsure * " + moved);
        double high = working.worked(
                "dose_high", "high end", "mL/d", formula("use_high", rest, per) + " + unsure * " + moved);
        return new Interval(Math.max(0, dose), Math.max(0, low), Math.max(0, high));
    }

    private static String formula(String use, String rest, String per) {
        return (rest.isEmpty() ? use : "(" + use + " - " + rest + ")") + " * litres / " + per;
    }

    private static String besides(Feed feed, double others, String unit, Working working) {
        if (feed.delivered() != 1) {
            working.given(
                    "delivered",
                    "what the pump gives of what it is set to",
                    feed.delivered(),
                    "1",
                    feed.pump().map(Setup.Pump::cell).orElse(""));
        }
        if (others == 0) {
            return "";
        }
        working.given("others", "raised a day by other additives", others, unit + "/d", "");
        return "others";
    }

    private static String litresCell(Matter matter) {
        return matter.history()
                .setup()
                .findTank(matter.tank().tank())
                .map(Setup.Tank::cell)
                .orElse("");
    }

    /** Canonical units by which 1 mL, as the pump is set, raises this tank. */
    double risePerMl() {
        return feed.row().risePerMlInOneLitre().orElseThrow()
                * feed.delivered()
                / matter.tank().litres().orElseThrow();
    }

    Parameter parameter() {
        return matter.parameter();
    }

    List<String> rests() {
        List<String> cells = new ArrayList<>(matter.places());
        cells.addAll(feed.places());
        return cells;
    }
}
