package soundings.setup;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;
import soundings.chemistry.Names;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.log.AsWritten;
import soundings.log.Issue;
import soundings.setup.SheetTable.Row;
import soundings.sheet.Cell;
import soundings.wording.VolumeUnit;

/**
 * Reads single cells of the companion workbook; what cannot be read goes to {@code issues}.
 *
 * @param decimalMark {@code .} or {@code ,} where the keeper has said which, a space otherwise
 * @param dayFirst how {@code 3/4/2026} is meant; empty where the keeper has not said
 * @param gallons what a gallon without its country is
 */
record Cells(
        Reference reference,
        char decimalMark,
        Optional<Boolean> dayFirst,
        Optional<VolumeUnit> gallons,
        List<Issue> issues) {

    Optional<Parameter> parameter(Row row) {
        AsWritten at = row.at("Parameter");
        if (at.text().isEmpty()) {
            issues.add(new SetupIssues.IncompleteRow(at, "parameter"));
            return Optional.empty();
        }
        Optional<Parameter> found = SetupReading.findParameter(reference, at.text());
        if (found.isEmpty()) {
            issues.add(new SetupIssues.UnknownParameter(at));
        }
        return found;
    }

    /** A bare number: a count, a share. */
    OptionalDouble number(Row row, String column) {
        return written(row, column)
                .map(w -> resolved(w, row.at(column), n -> true))
                .orElse(OptionalDouble.empty());
    }

    /** A level in the parameter's canonical unit, within what is plausible. */
    OptionalDouble level(Row row, String column, Parameter parameter) {
        Optional<WrittenNumber> written = written(row, column);
        if (written.isEmpty()) {
            return OptionalDouble.empty();
        }
        AsWritten at = row.at(column);
        return scale(row, at, written.get().unit(), parameter)
                .map(scale -> level(written.get(), at, scale))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble level(WrittenNumber written, AsWritten at, Scale scale) {
        Parameter parameter = scale.parameter();
        OptionalDouble number = resolved(written, at, n -> isUsual(parameter, scale.canonical(n)));
        if (number.isEmpty()) {
            return number;
        }
        double level = scale.canonical(number.getAsDouble());
        if (isUsual(parameter, level) || isNone(parameter, level)) {
            return OptionalDouble.of(level);
        }
        issues.add(new SetupIssues.ImplausibleSetting(
                at, "no tank has " + parameter.name() + " at '" + at.text() + "' (read as " + scale.label() + ")"));
        return OptionalDouble.empty();
    }

    private static boolean isUsual(Parameter parameter, double canonical) {
        return canonical >= parameter.plausibleLow() && canonical <= parameter.plausibleHigh();
    }

    /** A mix without a substance, a range that begins at nothing. */
    private static boolean isNone(Parameter parameter, double canonical) {
        return parameter.balances() && canonical == 0;
    }

    /** A difference in the parameter's canonical unit: an offset between scales, as between degrees, is no part of it. */
    OptionalDouble difference(Row row, String column, Parameter parameter) {
        Optional<WrittenNumber> written = written(row, column);
        if (written.isEmpty()) {
            return OptionalDouble.empty();
        }
        AsWritten at = row.at(column);
        OptionalDouble number = resolved(written.get(), at, n -> true);
        Optional<Scale> scale = scale(row, at, written.get().unit(), parameter);
        return number.isPresent() && scale.isPresent()
                ? OptionalDouble.of(difference(scale.get(), number.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** On a curved scale (specific gravity) the difference is taken at the middle of the plausible range. */
    private static double difference(Scale scale, double written) {
        Parameter p = scale.parameter();
        double base = scale.written((p.plausibleLow() + p.plausibleHigh()) / 2);
        return scale.canonical(base + written) - scale.canonical(base);
    }

    /** The unit in the cell, else the one in the Unit column, else the canonical one. */
    private Optional<Scale> scale(Row row, AsWritten at, String inCell, Parameter parameter) {
        String unit = inCell.isEmpty() ? row.text("Unit") : inCell;
        if (unit.isEmpty()) {
            return Optional.of(reference.canonicalScale(parameter));
        }
        Optional<Scale> found = reference.findScale(parameter, unit);
        if (found.isEmpty()) {
            issues.add(new SetupIssues.UnknownUnit(at, unit, parameter.name(), known(parameter)));
        }
        return found;
    }

    private String known(Parameter parameter) {
        return reference.scales(parameter).stream().map(Scale::label).collect(Collectors.joining(", "));
    }

    OptionalDouble litres(Row row, String column) {
        return volume(row, column, VolumeUnit.LITRE);
    }

    OptionalDouble millilitres(Row row, String column) {
        OptionalDouble litres = volume(row, column, VolumeUnit.MILLILITRE);
        return litres.isPresent() ? OptionalDouble.of(litres.getAsDouble() * 1000) : litres;
    }

    /** A volume in litres, more than none; {@code bare} is the unit of a number that stands alone. */
    private OptionalDouble volume(Row row, String column, VolumeUnit bare) {
        Optional<WrittenNumber> written = written(row, column);
        AsWritten at = row.at(column);
        Optional<VolumeUnit> unit = written.flatMap(w -> unit(w.unit(), at, bare));
        if (unit.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble number = resolved(written.get(), at, n -> true);
        if (number.isPresent() && number.getAsDouble() <= 0) {
            issues.add(new SetupIssues.UnreadableSetting(at, "a volume above zero"));
            return OptionalDouble.empty();
        }
        return number.isPresent()
                ? OptionalDouble.of(number.getAsDouble() * unit.get().litres().orElseThrow())
                : number;
    }

    private Optional<VolumeUnit> unit(String written, AsWritten at, VolumeUnit bare) {
        if (written.isEmpty()) {
            return Optional.of(bare);
        }
        Optional<VolumeUnit> unit = VolumeUnit.of(written)
                .map(u -> u == VolumeUnit.GALLON ? gallons.orElseGet(() -> assumedUs(at)) : u)
                .filter(u -> u.litres().isPresent());
        if (unit.isEmpty()) {
            issues.add(new SetupIssues.UnknownUnit(at, written, "a volume", "L, mL, US gal, imp gal"));
        }
        return unit;
    }

    private VolumeUnit assumedUs(AsWritten at) {
        issues.add(new SetupIssues.Assumed(at, "'" + at.text() + "' is taken as US gallons; write US gal or imp gal"));
        return VolumeUnit.US_GALLON;
    }

    private Optional<WrittenNumber> written(Row row, String column) {
        Optional<Cell> cell = row.cell(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<WrittenNumber> number = cell.get()
                .value()
                .match(
                        text -> WrittenNumber.parse(text.text(), decimalMark),
                        numeric -> Optional.of(WrittenNumber.of(numeric.number())),
                        moment -> Optional.empty(),
                        flag -> Optional.empty(),
                        fault -> Optional.empty());
        if (number.isEmpty()) {
            issues.add(new SetupIssues.UnreadableSetting(row.at(column), "a number"));
        }
        return number;
    }

    private OptionalDouble resolved(WrittenNumber written, AsWritten at, DoublePredicate plausible) {
        OptionalDouble number = written.resolved(plausible);
        if (number.isEmpty()) {
            issues.add(new SetupIssues.UnreadableSetting(
                    at, "a number that is either with a decimal comma or with a thousands comma, not maybe both"));
        }
        return number;
    }

    Optional<LocalDate> date(Row row, String column) {
        Optional<Cell> cell = row.cell(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<LocalDate> date = cell.get()
                .value()
                .match(
                        text -> WrittenDate.parse(text.text(), dayFirst),
                        numeric -> Optional.empty(),
                        moment -> Optional.of(moment.at().toLocalDate()),
                        flag -> Optional.empty(),
                        fault -> Optional.empty());
        if (date.isEmpty()) {
            issues.add(new SetupIssues.UnreadableSetting(row.at(column), "a date such as 2026-04-23"));
        }
        return date;
    }

    Optional<Boolean> yesOrNo(Row row, String column) {
        String text = Names.fold(row.text(column));
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (List.of("yes", "y", "true", "1").contains(text)) {
            return Optional.of(true);
        }
        if (List.of("no", "n", "false", "0").contains(text)) {
            return Optional.of(false);
        }
        issues.add(new SetupIssues.UnreadableSetting(row.at(column), "yes or no"));
        return Optional.empty();
    }

    /** The other names in a cell, split at semicolons. */
    static List<String> names(Row row, String column) {
        return Arrays.stream(row.text(column).split(";"))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .toList();
    }
}
