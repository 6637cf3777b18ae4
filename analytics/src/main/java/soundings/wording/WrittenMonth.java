package soundings.wording;

import java.util.OptionalInt;

/** A month as written, such as a sheet's name. */
public record WrittenMonth(OptionalInt year, int month) {}
