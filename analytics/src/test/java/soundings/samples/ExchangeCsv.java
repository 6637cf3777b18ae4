package soundings.samples;

import java.nio.charset.Charset;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The exchange school's log: a text file with semicolons, decimal commas and an old encoding, one tank, dates with dots. */
final class ExchangeCsv {
    private static final LocalDate FIRST = LocalDate.of(2026, 2, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 7, 31);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("dd.MM.yyyy", Locale.ROOT);
    private static final String HEAD = "Datum;KH (°dKH);Ca mg/l;Mg mg/l;Nitrat mg/l;PO4 µg/l;Temp °C;Salinität (psu);"
            + "alk ml/Tag;Wasserwechsel %;Bemerkung";

    private final Truth truth = new Truth();
    private final StringBuilder csv = new StringBuilder(HEAD).append("\r\n");
    private int row = 1;

    static Sample sample() {
        return new ExchangeCsv().write();
    }

    private Sample write() {
        Map<String, Double> fresh = new LinkedHashMap<>(ClubLog.fresh());
        SimulatedTank tank = new SimulatedTank("Gallery", 300, fresh, 66)
                .has("alkalinity", 7.8, 0.5)
                .has("calcium", 422, 0.4)
                .has("magnesium", 1300, 0.1)
                .has("nitrate", 7, -0.1)
                .has("phosphate", 0.06, -0.0005)
                .has("salinity", 35, 0)
                .doses("alk", "alkalinity", 5.0);
        for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
            tank.day();
            day(tank, day);
        }
        truth.use(tank.name, LAST, "alkalinity", 0.5);
        byte[] setup = new SetupPages()
                .tanks(List.of(tank))
                .freshMix(fresh, Map.of("alkalinity", "dKH", "salinity", "psu"))
                .additives(new Object[] {"alk", "", "alkalinity", 5, "dKH", 1, 1})
                .bytes();
        return new Sample(
                "exchange school.csv", csv.toString().getBytes(Charset.forName("windows-1252")), setup, truth.lines());
    }

    private void day(SimulatedTank tank, LocalDate day) {
        Map<Integer, String> cells = new TreeMap<>();
        if (day.equals(FIRST)) {
            dose(tank, day, cells, 30);
        } else if (day.equals(LocalDate.of(2026, 5, 4))) {
            dose(tank, day, cells, 27.5);
        }
        if (Math.floorMod(day.toEpochDay(), 14) == 6) {
            tank.change(0.1);
            truth.change(tank.name, day, 0.1, at(9));
            cells.put(9, "10");
        }
        tests(tank, day, cells);
        if (tank.pick(45) == 0) {
            cells.put(10, "Scheiben gereinigt");
        }
        if (!cells.isEmpty()) {
            line(day, cells);
        }
    }

    private void dose(SimulatedTank tank, LocalDate day, Map<Integer, String> cells, double ml) {
        tank.rate("alk", ml);
        truth.dose(tank.name, day, "alk", ml, at(8));
        cells.put(8, comma(ml, 1));
    }

    private void tests(SimulatedTank tank, LocalDate day, Map<Integer, String> cells) {
        if (tank.due(day, 3, 0)) {
            cell(tank, day, cells, 1, "alkalinity", tank.tested("alkalinity", 0.12, 0.1), 1);
        }
        if (tank.due(day, 7, 1)) {
            cell(tank, day, cells, 2, "calcium", tank.tested("calcium", 6, 5), 0);
            cell(tank, day, cells, 7, "salinity", tank.tested("salinity", 0.2, 0.5), 1);
        }
        if (tank.due(day, 14, 3)) {
            cell(tank, day, cells, 3, "magnesium", tank.tested("magnesium", 15, 10), 0);
        }
        if (tank.due(day, 7, 4)) {
            cell(tank, day, cells, 4, "nitrate", tank.tested("nitrate", 0.6, 0.5), 1);
            double ug = Math.round(tank.tested("phosphate", 0.008, 0.001) * 1000 / 10) * 10.0;
            truth.reading(tank.name, day, "phosphate", ug / 1000, at(5));
            cells.put(5, comma(ug, 0));
        }
        if (tank.due(day, 2, 1)) {
            cell(tank, day, cells, 6, "temperature", Math.round((25 + tank.pick(8) * 0.1) * 10) / 10.0, 1);
        }
    }

    private void cell(
            SimulatedTank tank,
            LocalDate day,
            Map<Integer, String> cells,
            int column,
            String parameter,
            double value,
            int decimals) {
        truth.reading(tank.name, day, parameter, value, at(column));
        cells.put(column, comma(value, decimals) + (tank.pick(25) == 0 ? "?" : ""));
    }

    private void line(LocalDate day, Map<Integer, String> cells) {
        csv.append(DAY.format(day));
        for (int column = 1; column <= 10; column++) {
            csv.append(';').append(cells.getOrDefault(column, ""));
        }
        csv.append("\r\n");
        row++;
    }

    private Truth.Place at(int column) {
        return new Truth.Place("exchange school", (char) ('A' + column) + Integer.toString(row + 1));
    }

    private static String comma(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value).replace('.', ',');
    }
}
