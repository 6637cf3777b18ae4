package soundings.chemistry;

/**
 * A tank's water in a keeper's units, for what has to be worked out of several readings: saturation, pCO2, free ammonia.
 *
 * @param salinity practical, above 0
 * @param celsius degC
 * @param ph as read
 * @param scale what the pH counts; the total scale where the keeper did not say
 * @param phosphate mg/L PO4, and silicate mg/L SiO2; 0 where they were not tested
 */
public record TankWater(double salinity, double celsius, double ph, PhScale scale, double phosphate, double silicate) {
    /** g/mol; IUPAC 2021. */
    private static final double CALCIUM = 40.078;

    private static final double PHOSPHATE = 94.970;
    private static final double SILICA = 60.083;
    private static final double DKH_PER_MEQ_PER_LITRE = 56.077 / 20;

    public TankWater {
        if (!(salinity > 0)) {
            throw new IllegalArgumentException("seawater has a salinity above 0, not " + salinity);
        }
    }

    public TankWater(double salinity, double celsius, double ph, PhScale scale) {
        this(salinity, celsius, ph, scale, 0, 0);
    }

    /** From alkalinity (dKH); boron after Uppstroem, constants of the 2007 guide. */
    public CarbonateSystem carbonate(double alkalinityDkh) {
        double molPerKg = alkalinityDkh / DKH_PER_MEQ_PER_LITRE / 1000 / density();
        return CarbonateSystem.ofAlkalinityAndPh(
                molPerKg,
                scale.toTotal(ph, salinity, celsius),
                celsius,
                CarbonateConstants.at(salinity, celsius, Boron.U74, nutrients()));
    }

    private NutrientAcids nutrients() {
        return NutrientAcids.at(salinity, celsius, molPerKg(phosphate, PHOSPHATE), molPerKg(silicate, SILICA));
    }

    /** Saturation of aragonite from alkalinity (dKH) and calcium (mg/L). */
    public double aragoniteSaturation(double alkalinityDkh, double calciumMgPerLitre) {
        return carbonate(alkalinityDkh).aragoniteSaturation(molPerKg(calciumMgPerLitre, CALCIUM), salinity, celsius);
    }

    /** Saturation of calcite from alkalinity (dKH) and calcium (mg/L). */
    public double calciteSaturation(double alkalinityDkh, double calciumMgPerLitre) {
        return carbonate(alkalinityDkh).calciteSaturation(molPerKg(calciumMgPerLitre, CALCIUM), salinity, celsius);
    }

    /** Microatmospheres; the air has some 420. */
    public double pCo2(double alkalinityDkh) {
        return carbonate(alkalinityDkh).pCo2();
    }

    /** The un-ionised part of total ammonia, in the unit and basis the total is given in. */
    public double freeAmmonia(double total) {
        return total * Ammonia.unionisedShare(ph, scale, celsius, salinity);
    }

    private double molPerKg(double mgPerLitre, double molarMass) {
        return mgPerLitre / molarMass / 1000 / density();
    }

    private double density() {
        return Seawater.kilogramsPerLitre(salinity, celsius);
    }
}
