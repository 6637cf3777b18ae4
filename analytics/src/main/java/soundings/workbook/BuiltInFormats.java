package soundings.workbook;

import java.util.Map;

/** The number formats that a file names by number only (ISO/IEC 29500-1 §18.8.30, the table for all languages and the East Asian ones). */
final class BuiltInFormats {
    private static final Map<Integer, String> CODES = Map.ofEntries(
            Map.entry(1, "0"),
            Map.entry(2, "0.00"),
            Map.entry(3, "#,##0"),
            Map.entry(4, "#,##0.00"),
            Map.entry(9, "0%"),
            Map.entry(10, "0.00%"),
            Map.entry(11, "0.00E+00"),
            Map.entry(12, "# ?/?"),
            Map.entry(13, "# ??/??"),
            Map.entry(14, "m/d/yyyy"),
            Map.entry(15, "d-mmm-yy"),
            Map.entry(16, "d-mmm"),
            Map.entry(17, "mmm-yy"),
            Map.entry(18, "h:mm AM/PM"),
            Map.entry(19, "h:mm:ss AM/PM"),
            Map.entry(20, "h:mm"),
            Map.entry(21, "h:mm:ss"),
            Map.entry(22, "m/d/yyyy h:mm"),
            Map.entry(37, "#,##0 ;(#,##0)"),
            Map.entry(38, "#,##0 ;[Red](#,##0)"),
            Map.entry(39, "#,##0.00;(#,##0.00)"),
            Map.entry(40, "#,##0.00;[Red](#,##0.00)"),
            Map.entry(45, "mm:ss"),
            Map.entry(46, "[h]:mm:ss"),
            Map.entry(47, "mm:ss.0"),
            Map.entry(48, "##0.0E+0"),
            Map.entry(49, "@"));

    private BuiltInFormats() {}

    static String code(int id) {
        if (isEastAsianDate(id)) {
            return "yyyy/m/d";
        }
        return isEastAsianTime(id) ? "h:mm:ss" : CODES.getOrDefault(id, "General");
    }

    private static boolean isEastAsianDate(int id) {
        return (id >= 27 && id <= 31) || id == 36 || (id >= 50 && id <= 54) || id == 57 || id == 58;
    }

    private static boolean isEastAsianTime(int id) {
        return (id >= 32 && id <= 35) || id == 55 || id == 56;
    }
}
