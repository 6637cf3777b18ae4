package soundings.samples;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A blenny under treatment, a lagoon that is run in, a seagrass tank that was run in earlier, and the reef the blenny is to go back
 * to: a sheet a tank, with notes as pupils write them, one of which counts a day wrongly.
 */
final class ClinicLog {
    private static final LocalDate LAST = LocalDate.of(2026, 10, 31);
    private static final LocalDate TREATED = LocalDate.of(2026, 10, 6);
    private static final LocalDate LAGOON = LocalDate.of(2026, 9, 28);
    private static final LocalDate SEAGRASS = LocalDate.of(2026, 1, 5);
    private static final String BAY = "Sick bay";
    private static final double BAY_LITRES = 60;

    /** Spots counted each day of the course; -1: nobody looked. A relapse on day 15. */
    private static final List<Integer> SPOTS =
            List.of(14, 15, 12, 13, -1, 9, 10, 7, 5, 4, 2, 1, 0, 0, 2, 1, 0, 0, -1, 0, 0, 0, -1, 0, 0, 0);

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Truth truth = new Truth();
    private final Random chance = new Random(33);

    static Sample sample() {
        ClinicLog log = new ClinicLog();
        log.reef();
        log.bay();
        log.lagoon();
        log.seagrass();
        return new Sample("clinic log.xlsx", Bytes.of(log.workbook), setup(), log.truth.lines());
    }

    private void reef() {
        Pen pen = new Pen(workbook, "Reef table");
        pen.heads(0, 0, "Date", "Temp °C", "Salinity psu", "pH", "KH dKH", "Nitrate mg/l", "Phosphate mg/l", "Notes");
        int row = 1;
        for (LocalDate day = LocalDate.of(2026, 8, 1); !day.isAfter(LAST); day = day.plusDays(3)) {
            pen.date(row, 0, day);
            reading(pen, row, 1, "Reef table", day, "temperature", near(25.4, 0.2, 0.1));
            reading(pen, row, 2, "Reef table", day, "salinity", near(35, 0.2, 0.5));
            reading(pen, row, 3, "Reef table", day, "ph", near(8.2, 0.04, 0.05));
            reading(pen, row, 4, "Reef table", day, "alkalinity", near(8.1, 0.1, 0.1));
            reading(pen, row, 5, "Reef table", day, "nitrate", near(6, 0.4, 0.5));
            reading(pen, row, 6, "Reef table", day, "phosphate", near(0.06, 0.005, 0.01));
            if (day.equals(LocalDate.of(2026, 10, 6))) {
                pen.text(row, 7, "blenny has white spots, moved to the sick bay");
            }
            row++;
        }
    }

    private void bay() {
        Pen pen = new Pen(workbook, BAY);
        pen.text(0, 0, "sick bay - look in every morning");
        pen.heads(2, 0, "date", "temp (C)", "salinity (psu)", "pH", "NH3-N mg/l", "what we saw and did");
        double left = 0;
        int row = 3;
        for (int i = 0; i < SPOTS.size(); i++) {
            LocalDate day = TREATED.plusDays(i);
            boolean changed = i > 0 && i % 5 == 0;
            left = i == 0 ? 10 : changed ? left * 0.75 + (i == 20 ? 0 : 150 / BAY_LITRES) : left;
            pen.date(row, 0, day);
            if (i % 2 == 0) {
                reading(pen, row, 1, BAY, day, "temperature", near(26, 0.15, 0.1));
                reading(pen, row, 2, BAY, day, "salinity", near(31, 0.1, 0.5));
                reading(pen, row, 3, BAY, day, "ph", near(8.05, 0.03, 0.05));
                reading(pen, row, 4, BAY, day, "ammonia", i == 24 ? 0.25 : 0.01 * (i % 3));
            }
            String note = note(i, changed);
            if (!note.isEmpty()) {
                Truth.Place at = pen.text(row, 5, note);
                if (changed) {
                    truth.change(BAY, day, 0.25, at);
                }
            }
            row++;
        }
        truth.care("left", BAY, LAST, "vet medicine", left);
        truth.care("day", BAY, LAST, "vet medicine", SPOTS.size());
        truth.care("relapse", BAY, TREATED.plusDays(14), "vet medicine", 1);
        truth.care("earliestEnd", BAY, TREATED.plusDays(16).plusDays(10), "vet medicine", 11);
    }

    private static String note(int i, boolean changed) {
        String spots = SPOTS.get(i) < 0
                ? ""
                : SPOTS.get(i) == 0 ? "no spots" : SPOTS.get(i) + (SPOTS.get(i) == 1 ? " spot" : " spots");
        String start = i == 0 ? "600 mg vet medicine given. " : "";
        String called = i == 8 ? "day 8. " : i == 3 ? "day 4. " : "";
        String change = !changed ? "" : i == 20 ? "25 % water change. " : "25 % water change. re-dosed 150 mg. ";
        return (start + called + change + spots).strip();
    }

    private void lagoon() {
        Pen pen = new Pen(workbook, "Lagoon");
        pen.heads(0, 0, "Date", "NH3-N mg/l", "NO2 mg/l", "NO3 mg/l", "Temp °C", "Salinity psu", "pH", "Notes");
        for (int i = 0; i <= 33; i += i < 21 ? 3 : 2) {
            LocalDate day = LAGOON.plusDays(i);
            int row = 1 + i;
            pen.date(row, 0, day);
            reading(pen, row, 1, "Lagoon", day, "ammonia", Math.max(0, 2 - 0.11 * i));
            reading(pen, row, 2, "Lagoon", day, "nitrite", i < 21 ? 0.16 * i : 3.3 * Math.exp(-0.16 * (i - 21)));
            reading(pen, row, 3, "Lagoon", day, "nitrate", Math.round(0.7 * i));
            if (i % 6 == 0) {
                reading(pen, row, 4, "Lagoon", day, "temperature", near(25, 0.2, 0.1));
                reading(pen, row, 5, "Lagoon", day, "salinity", near(35, 0.2, 0.5));
                reading(pen, row, 6, "Lagoon", day, "ph", near(8.2, 0.02, 0.05));
            }
            if (i == 0) {
                pen.text(row, 7, "filled, rock in, ammonia started");
            }
        }
        truth.care("gone", "Lagoon", LAGOON.plusDays(21), "nitrite", Math.log(3.3 / 0.05) / 0.16);
    }

    private void seagrass() {
        Pen pen = new Pen(workbook, "Seagrass tank");
        pen.heads(0, 0, "Date", "NH3-N mg/l", "NO2 mg/l", "NO3 mg/l", "Notes");
        int row = 1;
        for (int i = 0; i <= 42; i += 3) {
            LocalDate day = SEAGRASS.plusDays(i);
            pen.date(row, 0, day);
            reading(pen, row, 1, "Seagrass tank", day, "ammonia", i == 42 ? 0 : Math.max(0, 2 - 0.12 * i));
            reading(pen, row, 2, "Seagrass tank", day, "nitrite", i < 18 ? 0.1 * i : Math.max(0, 3.8 - 0.12 * i));
            reading(pen, row, 3, "Seagrass tank", day, "nitrate", Math.round(0.5 * i));
            if (i == 39) {
                pen.text(row, 4, "all at zero, grass ordered");
            }
            row++;
        }
        challenge(pen, row);
        truth.care("zeros", "Seagrass tank", SEAGRASS.plusDays(39), "ammonia and nitrite", 39);
    }

    /** Two days after the last of them a challenge dose, and what was left of it the next morning. */
    private void challenge(Pen pen, int row) {
        LocalDate given = SEAGRASS.plusDays(44);
        pen.date(row, 0, given);
        reading(pen, row, 1, "Seagrass tank", given, "ammonia", 2);
        reading(pen, row, 2, "Seagrass tank", given, "nitrite", 0);
        pen.text(row, 4, "challenge 2 mg/l");
        pen.date(row + 1, 0, given.plusDays(1));
        reading(pen, row + 1, 1, "Seagrass tank", given.plusDays(1), "ammonia", 0);
        reading(pen, row + 1, 2, "Seagrass tank", given.plusDays(1), "nitrite", 0.02);
        reading(pen, row + 1, 3, "Seagrass tank", given.plusDays(1), "nitrate", 24);
        pen.text(row + 1, 4, "challenge gone");
    }

    private void reading(Pen pen, int row, int column, String tank, LocalDate day, String parameter, double value) {
        double shown = Math.round(value * 100) / 100.0;
        truth.reading(tank, day, parameter, shown, pen.number(row, column, shown));
    }

    private double near(double middle, double spread, double step) {
        return Math.round((middle + chance.nextGaussian() * spread) / step) * step;
    }

    private static byte[] setup() {
        return new SetupPages()
                .tankRows(
                        new Object[] {"Reef table", 380, "reef; reef tank"},
                        new Object[] {BAY, BAY_LITRES},
                        new Object[] {"Lagoon", 90, "", LAGOON},
                        new Object[] {"Seagrass tank", 70, "", SEAGRASS})
                .treatments(new Object[] {
                    BAY,
                    "blenny",
                    "vet medicine",
                    TREATED,
                    600,
                    "mg",
                    "",
                    10,
                    11,
                    "",
                    "as the vet wrote it down; read the label"
                })
                .moves(new Object[] {"blenny", BAY, "Reef table", LocalDate.of(2026, 11, 5)})
                .bytes();
    }
}
