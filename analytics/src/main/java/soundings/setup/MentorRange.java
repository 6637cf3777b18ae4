package soundings.setup;

import java.util.Optional;

/**
 * What became of a range written into a report.
 *
 * @param target empty where it could not be read
 * @param used whether tests are judged by it
 * @param said what became of it, in words
 */
public record MentorRange(WrittenRange written, Optional<Setup.Target> target, boolean used, String said) {}
