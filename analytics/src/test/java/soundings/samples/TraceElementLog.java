package soundings.samples;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * One tank whose iodine is clearly over-dosed and whose potassium is clearly under-dosed: the dose of iodine brings 1.7 ug/L a
 * day where 1.2 are used; the dose of potassium brings 0.5 mg/L where 0.8 are used.
 */
final class TraceElementLog {
    static final double IODINE_USE = 0.0012;
    static final double POTASSIUM_USE = 0.8;
    private static final LocalDate FIRST = LocalDate.of(2026, 5, 4);
    private static final LocalDate LAST = LocalDate.of(2026, 9, 30);

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Truth truth = new Truth();

    static Sample sample() {
        return new TraceElementLog().write();
    }

    private Sample write() {
        Map<String, Double> fresh = new LinkedHashMap<>(ClubLog.fresh());
        fresh.put("iodine", 0.06);
        fresh.put("potassium", 400.0);
        fresh.put("strontium", 8.0);
        SimulatedTank tank = new SimulatedTank("Stairwell", 200, fresh, 77)
                .has("alkalinity", 8.0, 0.55)
                .has("iodine", 0.06, IODINE_USE)
                .has("potassium", 402, POTASSIUM_USE)
                .has("strontium", 8.1, 0.02)
                .has("salinity", 35, 0)
                .doses("alk", "alkalinity", 5.0)
                .doses("iodide", "iodine", 0.1)
                .doses("potassium", "potassium", 20.0)
                .doses("strontium", "strontium", 4.0);
        Pen pen = new Pen(workbook, "Stairwell");
        pen.heads(
                0,
                0,
                "Date",
                "Time",
                "Alk (dKH)",
                "iodine ug/L",
                "K (mg/L)",
                "Sr mg/L",
                "salinity (ppt)",
                "alk ml/day",
                "iodide ml/day",
                "potassium ml/day",
                "strontium ml/day",
                "WC %",
                "notes");
        int row = 1;
        for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
            tank.day();
            if (doses(tank, day, pen, row) | tests(tank, day, pen, row)) {
                pen.date(row, 0, day);
                pen.text(row++, 1, tank.pick(2) == 0 ? "18:30" : "7:45");
            }
        }
        truth.use(tank.name, LAST, "iodine", IODINE_USE);
        truth.use(tank.name, LAST, "potassium", POTASSIUM_USE);
        truth.use(tank.name, LAST, "alkalinity", 0.55);
        return new Sample("trace elements.xlsx", Bytes.of(workbook), setup(tank, fresh), truth.lines());
    }

    private boolean doses(SimulatedTank tank, LocalDate day, Pen pen, int row) {
        if (day.equals(FIRST)) {
            String[] names = {"alk", "iodide", "potassium", "strontium"};
            double[] rates = {22, 3.4, 5, 1};
            for (int i = 0; i < names.length; i++) {
                tank.rate(names[i], rates[i]);
                truth.dose(tank.name, day, names[i], rates[i], pen.number(row, 7 + i, rates[i]));
            }
            return true;
        }
        if (Math.floorMod(day.toEpochDay(), 28) == 9) {
            tank.change(0.05);
            truth.change(tank.name, day, 0.05, pen.number(row, 11, 5));
            return true;
        }
        return false;
    }

    private boolean tests(SimulatedTank tank, LocalDate day, Pen pen, int row) {
        boolean any = false;
        if (tank.due(day, 4, 0)) {
            any = true;
            plain(tank, day, "alkalinity", tank.tested("alkalinity", 0.12, 0.1), pen, row, 2);
        }
        if (tank.due(day, 7, 2)) {
            any = true;
            double ug = Math.round(tank.tested("iodine", 0.006, 0.001) * 1000 / 5) * 5.0;
            truth.reading(tank.name, day, "iodine", ug / 1000, pen.number(row, 3, ug));
        }
        if (tank.due(day, 7, 4)) {
            any = true;
            plain(tank, day, "potassium", tank.tested("potassium", 6, 5), pen, row, 4);
        }
        if (tank.due(day, 10, 5)) {
            any = true;
            plain(tank, day, "strontium", tank.tested("strontium", 0.4, 0.5), pen, row, 5);
        }
        if (tank.due(day, 7, 6)) {
            any = true;
            plain(tank, day, "salinity", tank.tested("salinity", 0.2, 0.5), pen, row, 6);
        }
        return any;
    }

    private void plain(
            SimulatedTank tank, LocalDate day, String parameter, double value, Pen pen, int row, int column) {
        truth.reading(tank.name, day, parameter, value, pen.number(row, column, value));
    }

    private static byte[] setup(SimulatedTank tank, Map<String, Double> fresh) {
        return new SetupPages()
                .tanks(List.of(tank))
                .freshMix(fresh, Map.of("alkalinity", "dKH", "salinity", "psu"))
                .targets(
                        new Object[] {"", "iodine", 0.04, 0.08, "mg/L"},
                        new Object[] {"", "potassium", 380, 420, "mg/L"},
                        new Object[] {"", "strontium", 7, 9, "mg/L"})
                .additives(
                        new Object[] {"alk", "", "alkalinity", 5, "dKH", 1, 1},
                        new Object[] {"iodide", "", "iodine", 1, "ug/L", 1, 100},
                        new Object[] {"potassium", "", "potassium", 0.2, "mg/L", 1, 100},
                        new Object[] {"strontium", "", "strontium", 0.04, "mg/L", 1, 100})
                .bytes();
    }
}
