package soundings.chemistry;

/** A published relation the program computes with; {@code id} is the function's name in the code, {@code valid} its published range. */
public record Equation(String id, String gives, String valid, String source) {}
