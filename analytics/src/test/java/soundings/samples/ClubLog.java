package soundings.samples;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The README's sample: a school marine club's year, a sheet a tank, each grown its own way. The library's display tank has
 * its doses and water changes in the notes; the frag shelf has columns for them and thinks in meq/L and Fahrenheit; the
 * starter tub is three weeks old. A shopping list lives in the same workbook.
 */
final class ClubLog {
    private static final LocalDate FIRST = LocalDate.of(2025, 11, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 10, 31);
    private static final double DKH_PER_MEQ = 2.80385;

    /** What the pupils wrote of the library's animals, its light and what was to mend. */
    private static final Map<LocalDate, String> LIBRARY_NOTES = Map.ofEntries(
            Map.entry(LocalDate.of(2025, 11, 20), "fed mysis, a pinch every second day from now on"),
            Map.entry(LocalDate.of(2026, 2, 3), "skimmer drips, have a look"),
            Map.entry(LocalDate.of(2026, 2, 22), "skimmer sealed, dry again"),
            Map.entry(LocalDate.of(2026, 4, 18), "added snails, six of them"),
            Map.entry(LocalDate.of(2026, 5, 2), "heater thermostat sticks, replace it"),
            Map.entry(LocalDate.of(2026, 5, 5), "thermostat replaced"),
            Map.entry(LocalDate.of(2026, 6, 3), "PAR 210 left rock, 95 sand, 320 top"),
            Map.entry(LocalDate.of(2026, 8, 22), "PAR 290 left rock, 105 sand, 330 top"),
            Map.entry(LocalDate.of(2026, 9, 12), "left rock coral pale, polyps half out"),
            Map.entry(LocalDate.of(2026, 9, 25), "overfed on parents' evening"),
            Map.entry(LocalDate.of(2026, 10, 8), "found dead: one snail on the left rock"),
            Map.entry(LocalDate.of(2026, 10, 22), "left rock coral polyps out again"));

    private static final Map<LocalDate, String> FRAG_NOTES = Map.of(
            LocalDate.of(2026, 3, 4), "moved two frags to the library",
            LocalDate.of(2026, 7, 6), "air pump noisy, needs a look",
            LocalDate.of(2026, 8, 30), "air pump replaced, quiet now",
            LocalDate.of(2026, 10, 2), "fed rotifers");

    /** PAR at the frag shelf's upper rack, measured in the first week of each second month. */
    private static final Map<LocalDate, Integer> RACK_LIGHT = Map.of(
            LocalDate.of(2026, 2, 5), 165,
            LocalDate.of(2026, 4, 5), 160,
            LocalDate.of(2026, 6, 5), 150,
            LocalDate.of(2026, 8, 5), 140,
            LocalDate.of(2026, 10, 5), 115);

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Truth truth = new Truth();
    private final Map<String, Double> fresh = fresh();

    static Sample sample() {
        ClubLog log = new ClubLog();
        SimulatedTank library = log.library();
        SimulatedTank frags = log.frags();
        SimulatedTank tub = log.tub();
        log.shopping();
        return new Sample(
                "club log.xlsx", Bytes.of(log.workbook), log.setup(List.of(library, frags, tub)), log.truth.lines());
    }

    static Map<String, Double> fresh() {
        Map<String, Double> fresh = new LinkedHashMap<>();
        fresh.put("alkalinity", 8.0);
        fresh.put("calcium", 420.0);
        fresh.put("magnesium", 1320.0);
        fresh.put("nitrate", 0.5);
        fresh.put("phosphate", 0.02);
        fresh.put("salinity", 35.0);
        return fresh;
    }

    private SimulatedTank library() {
        SimulatedTank tank = new SimulatedTank("Library reef", 420, fresh, 11)
                .has("alkalinity", 8.1, 0.62)
                .has("calcium", 428, 4.3)
                .has("magnesium", 1330, 0.5)
                .has("nitrate", 9, -0.22)
                .has("phosphate", 0.07, -0.0014)
                .has("salinity", 35, 0)
                .doses("alk", "alkalinity", 5.0)
                .doses("calc", "calcium", 37.0);
        Pen pen = new Pen(workbook, "Library reef");
        pen.text(0, 0, "Library reef - marine club");
        pen.sheet().addMergedRegion(new CellRangeAddress(0, 0, 0, 5));
        pen.text(1, 0, "tests on Mondays and Thursdays, ask before changing anything!");
        pen.heads(3, 0, "Date", "KH", "Calcium", "Mg", "Nitrate", "PO4", "Salinity", "Temp", "pH", "What we did");
        pen.heads(4, 0, "", "dKH", "mg/l", "mg/l", "mg/l", "ppm", "psu", "°C", "", "");
        int row = 5;
        for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
            if (day.equals(LocalDate.of(2026, 8, 20))) {
                tank.usePerDay.put("alkalinity", 0.70);
                tank.usePerDay.put("calcium", 4.86);
            }
            tank.day();
            String notes = libraryNotes(tank, day, pen.place(row, 9));
            if (libraryTests(tank, day, pen, row) | !notes.isEmpty()) {
                pen.date(row, 0, day);
                if (!notes.isEmpty()) {
                    pen.text(row, 9, notes);
                }
                row++;
            }
            if (day.getDayOfMonth() == day.lengthOfMonth()) {
                row++;
            }
        }
        truth.use("Library reef", LAST, "alkalinity", 0.70);
        truth.use("Library reef", LAST, "calcium", 4.86);
        return tank;
    }

    private String libraryNotes(SimulatedTank tank, LocalDate day, Truth.Place at) {
        String more = LIBRARY_NOTES.getOrDefault(day, "");
        String notes = libraryRoutine(tank, day, at);
        return more.isEmpty() || notes.isEmpty() ? notes + more : notes + ". " + more;
    }

    private String libraryRoutine(SimulatedTank tank, LocalDate day, Truth.Place at) {
        StringBuilder notes = new StringBuilder();
        if (day.equals(FIRST)) {
            rate(tank, "alk", 52, day, at);
            rate(tank, "calc", 49, day, at);
            notes.append("dosing: alk 13 ml x4/day, calc 49 ml/day");
        } else if (day.equals(LocalDate.of(2026, 3, 9))) {
            rate(tank, "alk", 53.2, day, at);
            notes.append("alk up to 13.3 ml x4/day");
        } else if (day.equals(LocalDate.of(2026, 8, 17))) {
            notes.append("new lamp over the left side");
        } else if (day.equals(LocalDate.of(2026, 9, 5))) {
            notes.append("return pump rattles, have a look soon");
        } else if (day.equals(LocalDate.of(2026, 10, 12))) {
            notes.append("pump still rattling - order the part!!");
        } else if (day.getDayOfMonth() == 14) {
            tank.change(0.12);
            truth.change("Library reef", day, 0.12, at);
            notes.append("12 % water change");
        } else if (day.getDayOfMonth() == 28) {
            tank.change(42 / 420.0);
            truth.change("Library reef", day, 0.10, at);
            notes.append("changed 42 L");
        } else if (tank.happens(0.02)) {
            notes.append("glass cleaned, skimmer cup emptied");
        }
        return notes.toString();
    }

    private void rate(SimulatedTank tank, String additive, double ml, LocalDate day, Truth.Place at) {
        tank.rate(additive, ml);
        truth.dose(tank.name, day, additive, ml, at);
    }

    private boolean libraryTests(SimulatedTank tank, LocalDate day, Pen pen, int row) {
        boolean any = false;
        if (tank.due(day, 3, 0)) {
            any = true;
            double seen = tank.tested("alkalinity", 0.12, 0.1);
            if (day.equals(LocalDate.of(2026, 5, 12)) || tank.pick(130) == 0) {
                truth.mistyped(tank.name, day, "alkalinity", pen.number(row, 1, seen * 10));
            } else if (tank.happens(0.06)) {
                truth.reading(tank.name, day, "alkalinity", seen, pen.text(row, 1, "~" + one(seen)));
            } else {
                truth.reading(tank.name, day, "alkalinity", seen, pen.number(row, 1, seen));
            }
        }
        if (tank.due(day, 7, 2)) {
            any = true;
            plain(tank, day, pen, row, 2, "calcium", tank.tested("calcium", 6, 5));
            plain(tank, day, pen, row, 6, "salinity", tank.tested("salinity", 0.25, 0.5));
        }
        if (tank.due(day, 14, 5)) {
            any = true;
            plain(tank, day, pen, row, 3, "magnesium", tank.tested("magnesium", 18, 10));
        }
        if (tank.due(day, 7, 4)) {
            any = true;
            plain(tank, day, pen, row, 4, "nitrate", tank.tested("nitrate", 0.6, 0.5));
            double po4 = tank.tested("phosphate", 0.008, 0.01);
            if (po4 < 0.03) {
                truth.below(tank.name, day, "phosphate", 0.03, pen.text(row, 5, "<0.03"));
            } else {
                plain(tank, day, pen, row, 5, "phosphate", po4);
            }
        }
        if (tank.due(day, 2, 1)) {
            any = true;
            plain(tank, day, pen, row, 7, "temperature", Math.round((25.2 + tank.pick(9) * 0.1) * 10) / 10.0);
        }
        if (tank.due(day, 9, 6)) {
            any = true;
            plain(tank, day, pen, row, 8, "ph", Math.round((8.05 + tank.pick(4) * 0.05) * 100) / 100.0);
        }
        return any;
    }

    private void plain(
            SimulatedTank tank, LocalDate day, Pen pen, int row, int column, String parameter, double value) {
        truth.reading(tank.name, day, parameter, value, pen.number(row, column, value));
    }

    private SimulatedTank frags() {
        SimulatedTank tank = new SimulatedTank("Frag shelf", 160, fresh, 22)
                .has("alkalinity", 7.9, 0.9)
                .has("calcium", 415, 6.2)
                .has("magnesium", 1310, 0.7)
                .has("nitrate", 4, -0.05)
                .has("phosphate", 0.04, 0.0)
                .doses("alk", "alkalinity", 5.0)
                .doses("calc", "calcium", 37.0);
        Pen pen = new Pen(workbook, "Frag shelf");
        pen.heads(
                0,
                0,
                "When",
                "water temp (F)",
                "Alkalinity meq/L",
                "Ca ppm",
                "Mag (ppm)",
                "nitrates [mg/L]",
                "Phosphate [ppb]",
                "Alk dose ml/day",
                "calc dose ml/day",
                "Water change %",
                "Remarks",
                "PAR upper rack");
        int row = 1;
        for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
            tank.day();
            boolean any = fragDoses(tank, day, pen, row);
            any |= fragTests(tank, day, pen, row);
            if (any) {
                pen.text(row++, 0, day.getDayOfMonth() + "/" + day.getMonthValue() + "/" + (day.getYear() % 100));
            }
        }
        truth.use(tank.name, LAST, "alkalinity", 0.9);
        truth.use(tank.name, LAST, "calcium", 6.2);
        return tank;
    }

    private boolean fragDoses(SimulatedTank tank, LocalDate day, Pen pen, int row) {
        boolean any = false;
        if (day.equals(FIRST)) {
            rate(tank, "alk", 28.5, day, pen.number(row, 7, 28.5));
            rate(tank, "calc", 26.5, day, pen.number(row, 8, 26.5));
            any = true;
        }
        if (day.equals(LocalDate.of(2026, 6, 1))) {
            rate(tank, "alk", 28, day, pen.number(row, 7, 28));
            any = true;
        }
        if (Math.floorMod(day.toEpochDay(), 14) == 3) {
            tank.change(0.15);
            truth.change(tank.name, day, 0.15, pen.number(row, 9, 15));
            any = true;
        }
        return any;
    }

    private boolean fragTests(SimulatedTank tank, LocalDate day, Pen pen, int row) {
        boolean any = false;
        if (tank.due(day, 2, 0)) {
            any = true;
            double fahrenheit = Math.round((77.4 + tank.pick(12) * 0.1) * 10) / 10.0;
            truth.reading(tank.name, day, "temperature", (fahrenheit - 32) / 1.8, pen.number(row, 1, fahrenheit));
        }
        if (tank.due(day, 3, 1)) {
            any = true;
            double meq = Math.round(tank.tested("alkalinity", 0.12, 0.01) / DKH_PER_MEQ * 20) / 20.0;
            if (tank.pick(90) == 0) {
                truth.mistyped(tank.name, day, "alkalinity", pen.number(row, 2, meq * 10));
            } else {
                truth.reading(tank.name, day, "alkalinity", meq * DKH_PER_MEQ, pen.number(row, 2, meq));
            }
        }
        if (tank.due(day, 6, 4)) {
            any = true;
            plain(tank, day, pen, row, 3, "calcium", tank.tested("calcium", 7, 5));
        }
        if (tank.due(day, 15, 7)) {
            any = true;
            plain(tank, day, pen, row, 4, "magnesium", tank.tested("magnesium", 20, 10));
        }
        if (tank.due(day, 8, 2)) {
            any = true;
            plain(tank, day, pen, row, 5, "nitrate", tank.tested("nitrate", 0.5, 0.5));
            double ppb = Math.round(tank.tested("phosphate", 0.006, 0.001) * 1000 / 5) * 5.0;
            truth.reading(tank.name, day, "phosphate", ppb / 1000, pen.number(row, 6, ppb));
        }
        String remark = tank.pick(60) == 0 ? "cut two frags" : FRAG_NOTES.getOrDefault(day, "");
        if (!remark.isEmpty()) {
            pen.text(row, 10, remark);
            any = true;
        }
        if (RACK_LIGHT.containsKey(day)) {
            plain(tank, day, pen, row, 11, "par", RACK_LIGHT.get(day));
            any = true;
        }
        return any;
    }

    private SimulatedTank tub() {
        SimulatedTank tank = new SimulatedTank("Starter tub", 60, fresh, 33);
        Pen pen = new Pen(workbook, "Starter tub");
        pen.text(0, 1, "STARTER TUB (filled 10 Oct)");
        pen.heads(2, 1, "day", "ammonia mg/l", "nitrite mg/l", "nitrate mg/l", "temp C", "notes");
        int row = 3;
        for (LocalDate day = LocalDate.of(2026, 10, 10); !day.isAfter(LAST); day = day.plusDays(1)) {
            int age = (int) (day.toEpochDay() - LocalDate.of(2026, 10, 10).toEpochDay());
            double ammonia = Math.max(0, 2.0 * Math.exp(-Math.pow((age - 7) / 5.0, 2)));
            double nitrite = Math.max(0, 3.0 * Math.exp(-Math.pow((age - 13) / 5.0, 2)));
            pen.date(row, 1, day);
            plain(tank, day, pen, row, 2, "ammonia", Math.round(ammonia * 4) / 4.0);
            plain(tank, day, pen, row, 3, "nitrite", Math.round(nitrite * 4) / 4.0);
            plain(tank, day, pen, row, 4, "nitrate", Math.round(age * 0.6));
            plain(tank, day, pen, row, 5, "temperature", Math.round((25.0 + tank.pick(6) * 0.1) * 10) / 10.0);
            if (age == 0) {
                pen.text(row, 6, "fish food in for ammonia");
            }
            row++;
        }
        return tank;
    }

    private void shopping() {
        Pen pen = new Pen(workbook, "to buy");
        pen.heads(0, 0, "thing", "price", "who");
        pen.text(1, 0, "salt bucket");
        pen.number(1, 1, 58);
        pen.text(2, 0, "return pump part");
        pen.number(2, 1, 17.5);
        pen.text(3, 0, "test tubes");
        pen.number(3, 1, 8);
    }

    private byte[] setup(List<SimulatedTank> tanks) {
        return new SetupPages()
                .tanks(tanks)
                .freshMix(fresh, Map.of("alkalinity", "dKH", "salinity", "psu"))
                .targets(
                        new Object[] {"", "alkalinity", 7.5, 8.8, "dKH"},
                        new Object[] {"", "calcium", 400, 440, "mg/L"},
                        new Object[] {"", "magnesium", 1260, 1380, "mg/L"},
                        new Object[] {"", "nitrate", 2, 15, "mg/L"},
                        new Object[] {"", "phosphate", 0.02, 0.1, "mg/L"})
                .additives(
                        new Object[] {
                            "alk", "alkalinity solution", "alkalinity", 0.05, "dKH", 1, 100, "Na2CO3 94.5 g in 1 L", 1.0
                        },
                        new Object[] {
                            "calc", "calcium solution", "calcium", 0.37, "mg/L", 1, 100, "CaCl2.2H2O 136 g in 1 L", 20
                        })
                .pumps(
                        new Object[] {"Library reef", "alk", 4, 2000, LocalDate.of(2026, 10, 4), 10, 9.7},
                        new Object[] {"Library reef", "calc", 4, 2000, LocalDate.of(2026, 10, 4), 10, 10.1},
                        new Object[] {"Frag shelf", "alk", 6, 1000, LocalDate.of(2026, 10, 20)},
                        new Object[] {"Frag shelf", "calc", 6, 1000, LocalDate.of(2026, 10, 20)})
                .jobs(
                        new Object[] {"Frag shelf", "descale the top-up sensor", LocalDate.of(2026, 9, 14), "flood"},
                        new Object[] {"Library reef", "label the dosing tubes", LocalDate.of(2026, 10, 1), "slow harm"})
                .light(
                        new Object[] {"Library reef", "left rock", 150, 250, 10},
                        new Object[] {"Library reef", "sand", 60, 120, 10},
                        new Object[] {"Library reef", "top", 250, 400, 10},
                        new Object[] {"Frag shelf", "upper rack", 120, 200, 9})
                .tests(
                        new Object[] {"alkalinity", 3, 0.35},
                        new Object[] {"calcium", 7, 0.6},
                        new Object[] {"magnesium", 14, 0.7, LocalDate.of(2026, 11, 20)},
                        new Object[] {"nitrate", "", 0.45, LocalDate.of(2027, 5, 31), 5},
                        new Object[] {"phosphate", "", 0.8, "", 3},
                        new Object[] {"salinity", 7})
                .bytes();
    }

    private static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
