package soundings.chemistry;

/** Numbers of a recipe: a decimal point or a decimal comma, never a guess between the comma's two uses. */
final class Numbers {
    private Numbers() {}

    static double read(String text) {
        if (text.matches("[1-9]\\d{0,2},\\d{3}")) {
            throw new Unreadable("'" + text + "' may be thousands or a decimal: write it without the comma");
        }
        if (!text.matches("\\d+([.,]\\d+)?")) {
            throw new Unreadable("'" + text + "' is not a number");
        }
        double number = Double.parseDouble(text.replace(',', '.'));
        if (number == 0) {
            throw new Unreadable("'" + text + "' is nothing: an amount and a volume are above 0");
        }
        return number;
    }
}
