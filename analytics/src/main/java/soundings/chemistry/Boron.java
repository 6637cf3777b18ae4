package soundings.chemistry;

/** Which ratio of boron to salinity; the newer one is 4 % higher, which moves a computed pH by 0.006. */
public enum Boron {
    /** Uppstroem 1974, 0.000232 of chlorinity; the choice of the 2007 guide to best practices. */
    U74(0.000232 / 10.811 / 1.80655),
    /** Lee et al. 2010, 0.1336 mg/kg per unit of salinity. */
    LKB10(0.1336e-3 / 10.811);

    private final double molPerKgPerSalinity;

    Boron(double molPerKgPerSalinity) {
        this.molPerKgPerSalinity = molPerKgPerSalinity;
    }

    /** mol/kg. */
    public double total(double salinity) {
        return molPerKgPerSalinity * salinity;
    }
}
