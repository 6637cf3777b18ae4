package soundings.history;

import java.time.LocalDate;
import java.util.OptionalDouble;
import soundings.log.AsWritten;

/** A water change; {@code fraction} of the tank (0 to 1) is empty when only litres are known and the volume is not. */
public record Change(LocalDate on, OptionalDouble fraction, OptionalDouble litres, AsWritten at) {}
