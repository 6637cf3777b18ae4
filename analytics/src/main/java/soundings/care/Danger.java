package soundings.care;

import soundings.log.Reading;

/**
 * A test that can kill animals.
 *
 * @param free whether {@code value} is the un-ionised part of the ammonia
 * @param value canonical unit; for a reading that is only known as above, the limit it is above
 * @param limit at or above which it is dangerous; common practice, no source
 * @param aside why the reading was set aside elsewhere, empty where it was not
 */
public record Danger(String tank, Reading reading, boolean free, double value, double limit, String aside) {}
