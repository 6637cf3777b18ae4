package soundings.cli;

import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A month as written on the command line. */
final class Month implements ITypeConverter<YearMonth> {
    @Override
    public YearMonth convert(String written) {
        try {
            return YearMonth.parse(written);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("'" + written + "' is no month; write its year and number, as 2026-09");
        }
    }
}
