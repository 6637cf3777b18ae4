package soundings.template;

/** A template's text and the name it goes by in messages; {@code ours} when it ships with the program. */
public record Source(String name, String text, boolean ours) {}
