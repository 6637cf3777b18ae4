package soundings.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import soundings.sheet.FormatCode.Kind;
import soundings.sheet.FormatCode.Token;

/**
 * A number as its format shows it, in the format code's own notation: decimal point, comma between thousands. Fractions and
 * formats with text between their digits are shown as plain numbers.
 */
final class ShownNumber {
    /** Spreadsheets keep 15 significant digits. */
    private static final MathContext DIGITS = new MathContext(15);

    private ShownNumber() {}

    static String of(double number, FormatCode format) {
        Choice choice = Choice.of(number, format.sections());
        StringBuilder shown = new StringBuilder(choice.minus() ? "-" : "");
        List<Token> tokens = choice.section();
        if (!isPlain(tokens) || (format.shows().isPresent() && !hasDigits(tokens))) {
            return plain(number);
        }
        boolean bodyDone = false;
        for (int i = 0; i < tokens.size(); i++) {
            boolean body = isBody(tokens.get(i));
            if (body && !bodyDone) {
                shown.append(body(Math.abs(number), tokens));
                bodyDone = true;
            } else if (!body) {
                shown.append(
                        tokens.get(i).kind() == Kind.CONDITION
                                ? ""
                                : tokens.get(i).text());
            }
        }
        return shown.toString().strip();
    }

    static String plain(double number) {
        if (number == Math.rint(number) && Math.abs(number) < 1e15) {
            return Long.toString((long) number);
        }
        return new BigDecimal(number, DIGITS).stripTrailingZeros().toPlainString();
    }

    /** The section that applies, and whether a minus sign stands before it. */
    private record Choice(List<Token> section, boolean minus) {
        static Choice of(double number, List<List<Token>> sections) {
            int count = Math.min(sections.size(), 3);
            for (int i = 0; i < count; i++) {
                if (applies(number, i, count, sections.get(i))) {
                    boolean ownSign = i == 1 && condition(sections.get(0)).isEmpty();
                    return new Choice(sections.get(i), number < 0 && !ownSign);
                }
            }
            return new Choice(sections.get(count - 1), number < 0);
        }

        private static boolean applies(double number, int index, int count, List<Token> section) {
            String condition = condition(section);
            if (!condition.isEmpty()) {
                return holds(number, condition);
            }
            return switch (index) {
                case 0 -> count == 1 || number > 0 || (count == 2 && number == 0);
                case 1 -> number < 0 || count == 2;
                default -> true;
            };
        }

        private static String condition(List<Token> section) {
            return section.stream()
                    .filter(token -> token.kind() == Kind.CONDITION)
                    .map(Token::text)
                    .findFirst()
                    .orElse("");
        }

        private static boolean holds(double number, String condition) {
            String sign = condition.replaceAll("[^<>=].*", "");
            try {
                double bound =
                        Double.parseDouble(condition.substring(sign.length()).strip());
                return switch (sign) {
                    case "<" -> number < bound;
                    case "<=" -> number <= bound;
                    case ">" -> number > bound;
                    case ">=" -> number >= bound;
                    case "=" -> number == bound;
                    default -> number != bound;
                };
            } catch (NumberFormatException odd) {
                return false;
            }
        }
    }

    private static boolean isBody(Token token) {
        return token.kind() == Kind.GENERAL
                || FormatCode.isDigit(token)
                || (token.kind() == Kind.PLACEHOLDER && ".,E@".contains(token.text()));
    }

    /** Whether all digits stand together: no fraction, no text among them. */
    private static boolean isPlain(List<Token> tokens) {
        boolean ended = false;
        boolean begun = false;
        for (Token token : tokens) {
            boolean body = isBody(token);
            if (body && ended && !token.text().equals(",") && !token.text().equals(".")) {
                return false;
            }
            begun |= body;
            ended |= begun && !body;
        }
        return true;
    }

    private static boolean hasDigits(List<Token> tokens) {
        return tokens.stream().anyMatch(FormatCode::isDigit);
    }

    private static String body(double number, List<Token> tokens) {
        String digits = text(tokens);
        if (!digits.matches(".*[0#?].*")) {
            return plain(number);
        }
        long percents = tokens.stream()
                .filter(token -> token.text().equals("%") && token.kind() == Kind.PLACEHOLDER)
                .count();
        BigDecimal value = new BigDecimal(number, DIGITS).scaleByPowerOfTen((int) (2 * percents));
        int exponent = digits.indexOf('E');
        if (exponent >= 0) {
            return scientific(value, digits.substring(0, exponent), digits.substring(exponent + 1));
        }
        int thousands = digits.length() - digits.replaceAll(",+(?=$|\\.)", "").length();
        return decimal(value.scaleByPowerOfTen(-3 * thousands), digits.replaceAll(",+(?=$|\\.)", ""));
    }

    private static String text(List<Token> tokens) {
        StringBuilder digits = new StringBuilder();
        tokens.stream().filter(ShownNumber::isBody).map(Token::text).forEach(digits::append);
        return digits.toString();
    }

    private static String decimal(BigDecimal value, String digits) {
        int point = digits.indexOf('.');
        String whole = point < 0 ? digits : digits.substring(0, point);
        String decimals = point < 0 ? "" : digits.substring(point + 1).replaceAll("[.,]", "");
        String rounded = value.setScale(decimals.length(), RoundingMode.HALF_UP).toPlainString();
        String[] halves = rounded.split("\\.");
        String integer =
                leading(halves[0], (int) whole.chars().filter(c -> c == '0').count());
        String grouped = whole.indexOf(',') < 0 ? integer : integer.replaceAll("(?<=\\d)(?=(\\d{3})+$)", ",");
        return grouped + (point < 0 ? "" : "." + trailing(halves.length < 2 ? "" : halves[1], decimals));
    }

    private static String leading(String integer, int zeros) {
        String bare = integer.equals("0") ? "" : integer;
        return "0".repeat(Math.max(0, zeros - bare.length())) + bare;
    }

    private static String trailing(String decimals, String places) {
        int keep = decimals.length();
        while (keep > 0 && decimals.charAt(keep - 1) == '0' && places.charAt(keep - 1) != '0') {
            keep--;
        }
        return decimals.substring(0, keep);
    }

    private static String scientific(BigDecimal value, String mantissa, String exponentDigits) {
        int exponent = value.signum() == 0 ? 0 : value.precision() - value.scale() - 1;
        String body = decimal(value.scaleByPowerOfTen(-exponent), mantissa);
        if (body.startsWith("10")) {
            exponent++;
            body = decimal(value.scaleByPowerOfTen(-exponent), mantissa);
        }
        return body + "E" + (exponent < 0 ? "-" : "+")
                + leading(Integer.toString(Math.abs(exponent)), exponentDigits.length());
    }
}
