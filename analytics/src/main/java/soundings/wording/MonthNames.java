package soundings.wording;

import java.time.DayOfWeek;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Names of months and weekdays in English, German, French, Spanish, Dutch, long and short, without accents. */
final class MonthNames {
    private static final Map<String, Integer> MONTHS = numbered(
            "jan january januar janvier janv enero ene januari janner jaenner",
            "feb february februar fevrier fevr febrero februari febr",
            "mar march marz maerz mrz mars marzo maart mrt",
            "apr april avril avr abril abr",
            "may mai mayo mei",
            "jun june juni juin junio",
            "jul july juli juillet juil julio",
            "aug august aout agosto ago augustus",
            "sep sept september septembre septiembre setiembre",
            "oct october oktober okt octobre octubre",
            "nov november novembre noviembre",
            "dec december dezember dez decembre diciembre dic");
    private static final Map<String, Integer> WEEKDAYS = numbered(
            "mon monday mo montag lundi lun lunes maandag ma",
            "tue tues tuesday di dienstag mardi martes dinsdag",
            "wed weds wednesday mi mittwoch mercredi mer miercoles mie woensdag wo",
            "thu thur thurs thursday do donnerstag jeudi jeu jueves jue donderdag",
            "fri friday fr freitag vendredi ven viernes vie vrijdag vr",
            "sat saturday sa samstag sonnabend samedi sam sabado sab zaterdag za",
            "sun sunday so sonntag dimanche dim domingo dom zondag zo");

    private MonthNames() {}

    private static Map<String, Integer> numbered(String... lines) {
        Map<String, Integer> numbers = new HashMap<>();
        for (int i = 0; i < lines.length; i++) {
            for (String name : lines[i].split(" ", -1)) {
                numbers.put(name.toLowerCase(Locale.ROOT), i + 1);
            }
        }
        return Map.copyOf(numbers);
    }

    static OptionalInt month(String plainWord) {
        Integer number = MONTHS.get(plainWord);
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    static Optional<DayOfWeek> weekday(String plainWord) {
        return Optional.ofNullable(WEEKDAYS.get(plainWord)).map(DayOfWeek::of);
    }
}
