package soundings.samples;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A line a test: two corridor tanks, three pupils who spell tests and units differently, doses and changes on sheets of their own. */
final class LongFormLog {
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
    private static final LocalDate LAST = LocalDate.of(2026, 8, 30);
    private static final String[][] ALKALINITY = {{"KH", "dKH"}, {"Alkalinity", "dKH"}, {"alk", "meq/L"}};
    private static final double DKH_PER_MEQ = 2.80385;

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Truth truth = new Truth();
    private final Pen results = new Pen(workbook, "results");
    private final Pen dosing = new Pen(workbook, "dosing");
    private final Pen changes = new Pen(workbook, "water changes");
    private int resultRow = 1;
    private int doseRow = 1;
    private int changeRow = 1;

    static Sample sample() {
        LongFormLog log = new LongFormLog();
        log.results.heads(0, 0, "date", "tank", "test", "result", "unit", "tested by");
        log.dosing.heads(0, 0, "tank", "from", "additive", "ml per day", "why");
        log.changes.heads(0, 0, "date", "tank", "litres changed", "remarks");
        Map<String, Double> fresh = new LinkedHashMap<>(ClubLog.fresh());
        SimulatedTank corridor = new SimulatedTank("Corridor", 250, fresh, 44)
                .has("alkalinity", 8.3, 0.45)
                .has("calcium", 430, 3.1)
                .has("nitrate", 12, -0.1)
                .has("phosphate", 0.09, -0.001)
                .has("salinity", 34.5, 0)
                .doses("alkalinity mix", "alkalinity", 5.0)
                .doses("calcium mix", "calcium", 37.0);
        SimulatedTank cave = new SimulatedTank("Cave", 110, fresh, 55)
                .has("alkalinity", 7.6, 0.3)
                .has("calcium", 405, 2.1)
                .has("nitrate", 5, -0.05)
                .has("phosphate", 0.05, 0)
                .has("salinity", 35, 0)
                .doses("alkalinity mix", "alkalinity", 5.0)
                .doses("calcium mix", "calcium", 37.0);
        for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
            log.day(corridor, day, new double[] {22.5, 21});
            log.day(cave, day, new double[] {6.6, 6.2});
        }
        for (SimulatedTank tank : List.of(corridor, cave)) {
            log.truth.use(tank.name, LAST, "alkalinity", tank.usePerDay.getOrDefault("alkalinity", 0.0));
            log.truth.use(tank.name, LAST, "calcium", tank.usePerDay.getOrDefault("calcium", 0.0));
        }
        byte[] setup = new SetupPages()
                .tanks(List.of(corridor, cave))
                .freshMix(fresh, Map.of("alkalinity", "dKH", "salinity", "psu"))
                .additives(
                        new Object[] {"alkalinity mix", "", "alkalinity", 5, "dKH", 1, 1},
                        new Object[] {"calcium mix", "", "calcium", 37, "mg/L", 1, 1})
                .bytes();
        return new Sample("one line a test.xlsx", Bytes.of(log.workbook), setup, log.truth.lines());
    }

    private void day(SimulatedTank tank, LocalDate day, double[] startingRates) {
        tank.day();
        if (day.equals(FIRST)) {
            dose(tank, day, "alkalinity mix", startingRates[0]);
            dose(tank, day, "calcium mix", startingRates[1]);
        }
        if (day.equals(LocalDate.of(2026, 6, 8))) {
            dose(tank, day, "alkalinity mix", startingRates[0] * 0.9);
        }
        if (Math.floorMod(day.toEpochDay(), 21) == 4) {
            change(tank, day, tank.litres / 10);
        }
        tests(tank, day);
    }

    private void tests(SimulatedTank tank, LocalDate day) {
        if (tank.due(day, 3, 0)) {
            String[] how = ALKALINITY[tank.pick(3)];
            boolean meq = how[1].equals("meq/L");
            double seen = tank.tested("alkalinity", 0.13, 0.1);
            double written = meq ? Math.round(seen / DKH_PER_MEQ * 100) / 100.0 : seen;
            line(tank, day, how[0], written, how[1], "alkalinity", meq ? written * DKH_PER_MEQ : written);
        }
        if (tank.due(day, 6, 1)) {
            double seen = tank.tested("calcium", 7, 5);
            line(tank, day, tank.pick(2) == 0 ? "Ca" : "Calcium", seen, "mg/l", "calcium", seen);
        }
        if (tank.due(day, 7, 3)) {
            double seen = tank.tested("nitrate", 0.6, 0.5);
            line(tank, day, "NO3", seen, "ppm", "nitrate", seen);
        }
        if (tank.due(day, 7, 5)) {
            double seen = tank.tested("phosphate", 0.01, 0.01);
            boolean asPhosphorus = tank.pick(3) == 0;
            double ppb = Math.round(seen / 3.06612 * 1000);
            line(
                    tank,
                    day,
                    "phosphate",
                    asPhosphorus ? ppb : seen,
                    asPhosphorus ? "ppb P" : "mg/l",
                    "phosphate",
                    asPhosphorus ? ppb / 1000 * 3.06612 : seen);
        }
        if (tank.due(day, 10, 6)) {
            double seen = tank.tested("salinity", 0.25, 0.5);
            line(tank, day, "salinity", seen, "psu", "salinity", seen);
        }
        if (tank.pick(40) == 0) {
            head(tank, day, "Mg");
            results.text(resultRow, 3, "kit ran out");
            resultRow++;
        }
    }

    private void head(SimulatedTank tank, LocalDate day, String test) {
        results.text(resultRow, 0, day.toString());
        results.text(resultRow, 1, tank.pick(8) == 0 ? tank.name.toLowerCase(Locale.ROOT) : tank.name);
        results.text(resultRow, 2, test);
        results.text(resultRow, 5, new String[] {"year 9", "year 10", "duty"}[tank.pick(3)]);
    }

    private void line(
            SimulatedTank tank,
            LocalDate day,
            String test,
            double written,
            String unit,
            String parameter,
            double canonical) {
        head(tank, day, test);
        Truth.Place at = results.number(resultRow, 3, written);
        results.text(resultRow, 4, unit);
        truth.reading(tank.name, day, parameter, canonical, at);
        resultRow++;
    }

    private void dose(SimulatedTank tank, LocalDate day, String additive, double ml) {
        tank.rate(additive, ml);
        dosing.text(doseRow, 0, tank.name);
        dosing.date(doseRow, 1, day);
        dosing.text(doseRow, 2, additive);
        truth.dose(tank.name, day, additive, ml, dosing.number(doseRow, 3, ml));
        doseRow++;
    }

    private void change(SimulatedTank tank, LocalDate day, double litres) {
        tank.change(litres / tank.litres);
        changes.date(changeRow, 0, day);
        changes.text(changeRow, 1, tank.name);
        truth.change(tank.name, day, litres / tank.litres, changes.number(changeRow, 2, litres));
        changeRow++;
    }
}
