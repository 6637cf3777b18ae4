package soundings.samples;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a companion setup workbook in the form the program reads. */
final class SetupPages {
    private final Workbook workbook = new XSSFWorkbook();

    SetupPages tanks(List<SimulatedTank> tanks) {
        Pen pen = new Pen(workbook, "Tanks");
        pen.heads(0, 0, "Tank", "Litres", "Written as", "Since");
        for (int i = 0; i < tanks.size(); i++) {
            pen.text(i + 1, 0, tanks.get(i).name);
            pen.number(i + 1, 1, tanks.get(i).litres);
        }
        return this;
    }

    SetupPages freshMix(Map<String, Double> fresh, Map<String, String> units) {
        Pen pen = new Pen(workbook, "Fresh mix");
        pen.heads(0, 0, "Tank", "Parameter", "Value", "Unit");
        int row = 1;
        for (Map.Entry<String, Double> value : fresh.entrySet()) {
            pen.text(row, 1, value.getKey());
            pen.number(row, 2, value.getValue());
            pen.text(row++, 3, units.getOrDefault(value.getKey(), "mg/L"));
        }
        return this;
    }

    /** Rows of tank, parameter, low, high, unit. */
    SetupPages targets(Object[]... rows) {
        return table("Targets", List.of("Tank", "Parameter", "Low", "High", "Unit"), rows);
    }

    /** Rows of additive, written as, parameter, rise, unit, of mL, in litres, recipe, max rise a day. */
    SetupPages additives(Object[]... rows) {
        return table(
                "Additives",
                List.of(
                        "Additive",
                        "Written as",
                        "Parameter",
                        "Rise",
                        "Unit",
                        "Of mL",
                        "In litres",
                        "Recipe",
                        "Max rise a day"),
                rows);
    }

    /** Rows of tank, additive, doses a day, container mL, filled on, commanded mL, measured mL. */
    SetupPages pumps(Object[]... rows) {
        return table(
                "Pumps",
                List.of("Tank", "Additive", "Doses a day", "Container mL", "Filled on", "Commanded mL", "Measured mL"),
                rows);
    }

    /** Rows of parameter, kit, step, error, unit. */
    SetupPages kits(Object[]... rows) {
        return table("Kits", List.of("Parameter", "Kit", "Step", "Error", "Unit"), rows);
    }

    /** Rows of tank, litres, written as, since. */
    SetupPages tankRows(Object[]... rows) {
        return table("Tanks", List.of("Tank", "Litres", "Written as", "Since"), rows);
    }

    /** Rows of tank, animal, medicine, started, amount, unit, every days, keep at, symptom-free days, ended, notes. */
    SetupPages treatments(Object[]... rows) {
        return table(
                "Treatments",
                List.of(
                        "Tank",
                        "Animal",
                        "Medicine",
                        "Started",
                        "Amount",
                        "Unit",
                        "Every days",
                        "Keep at mg per litre",
                        "Symptom-free days to end",
                        "Ended",
                        "Notes"),
                rows);
    }

    /** Rows of animal, from, to, planned on. */
    SetupPages moves(Object[]... rows) {
        return table("Moves", List.of("Animal", "From", "To", "Planned on"), rows);
    }

    /** Rows of tank, job, noticed, at risk, done. */
    SetupPages jobs(Object[]... rows) {
        return table("Jobs", List.of("Tank", "Job", "Noticed", "At risk", "Done"), rows);
    }

    /** Rows of tank, place, PAR low, PAR high, hours a day. */
    SetupPages light(Object[]... rows) {
        return table("Light", List.of("Tank", "Place", "PAR low", "PAR high", "Hours a day"), rows);
    }

    /** Rows of parameter, every days, price a test, kit expires, wait minutes. */
    SetupPages tests(Object[]... rows) {
        return table("Tests", List.of("Parameter", "Every days", "Price a test", "Kit expires", "Wait minutes"), rows);
    }

    private SetupPages table(String name, List<String> heads, Object[]... rows) {
        Pen pen = new Pen(workbook, name);
        pen.heads(0, 0, heads.toArray(String[]::new));
        for (int r = 0; r < rows.length; r++) {
            for (int c = 0; c < rows[r].length; c++) {
                if (rows[r][c] instanceof Number number) {
                    pen.number(r + 1, c, number.doubleValue());
                } else if (rows[r][c] instanceof java.time.LocalDate day) {
                    pen.date(r + 1, c, day);
                } else if (rows[r][c] instanceof String text && !text.isEmpty()) {
                    pen.text(r + 1, c, text);
                }
            }
        }
        return this;
    }

    byte[] bytes() {
        return Bytes.of(workbook);
    }
}
