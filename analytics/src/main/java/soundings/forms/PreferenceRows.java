package soundings.forms;

import java.util.List;
import java.util.Map;

/** The choices a keeper can make for the whole log. */
final class PreferenceRows {
    static final List<Map<String, String>> ALL = List.of(
            row(
                    "date order",
                    "day first, month first, or year first",
                    "decided once for the whole log by what stands in it"),
            row("decimal mark", "comma or point", "decided column by column by what stands in it"),
            row("month to report", "a month such as 2026-04", "the last month with a reading"),
            row(
                    "alkalinity unit",
                    "the unit to show it in: dKH, meq/L or mg/L CaCO3; the same of any test, such as nitrate unit",
                    "the unit most of the last tests are written in"),
            row(
                    "zero tests",
                    "a number such as 3",
                    "3 tests in a row without ammonia and nitrite make a new tank ready"),
            row("volume unit", "L, US gal or imp gal", "a bare number is litres; gal alone is asked about"));

    private PreferenceRows() {}

    private static Map<String, String> row(String name, String choices, String ifBlank) {
        return Map.of("Name", name, SetupForms.CHOICES, choices, SetupForms.IF_BLANK, ifBlank);
    }
}
