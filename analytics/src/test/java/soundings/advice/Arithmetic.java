package soundings.advice;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.StringTokenizer;

/** Evaluates a formula on its own, by two stacks, to check the program's own evaluation. */
final class Arithmetic {
    private Arithmetic() {}

    static double value(String formula, Map<String, Double> names) {
        Deque<Double> numbers = new ArrayDeque<>();
        Deque<Character> signs = new ArrayDeque<>();
        StringTokenizer tokens = new StringTokenizer(formula.replace(" ", ""), "+-*/()", true);
        while (tokens.hasMoreTokens()) {
            String token = tokens.nextToken();
            char c = token.charAt(0);
            if (c == '(') {
                signs.push(c);
            } else if (c == ')') {
                while (signs.peek() != '(') {
                    reduce(numbers, signs);
                }
                signs.pop();
            } else if ("+-*/".indexOf(c) >= 0) {
                while (!signs.isEmpty() && signs.peek() != '(' && rank(signs.peek()) >= rank(c)) {
                    reduce(numbers, signs);
                }
                signs.push(c);
            } else {
                numbers.push(Character.isDigit(c) ? Double.parseDouble(token) : names.get(token));
            }
        }
        while (!signs.isEmpty()) {
            reduce(numbers, signs);
        }
        return numbers.pop();
    }

    private static int rank(char sign) {
        return sign == '+' || sign == '-' ? 1 : 2;
    }

    private static void reduce(Deque<Double> numbers, Deque<Character> signs) {
        double right = numbers.pop();
        double left = numbers.pop();
        switch (signs.pop()) {
            case '+' -> numbers.push(left + right);
            case '-' -> numbers.push(left - right);
            case '*' -> numbers.push(left * right);
            default -> numbers.push(left / right);
        }
    }
}
