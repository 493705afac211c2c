package pairwright.numbers;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A pocket calculator: works an expression out as a student would, from nothing but what is written. Angles in degrees. */
final class Arithmetic {
    private final String text;
    private int at;

    private Arithmetic(String expression) {
        text = expression.replace(" ", "").replace("°", "");
    }

    static double of(String expression) {
        Arithmetic calculator = new Arithmetic(expression);
        double value = calculator.sum();
        if (calculator.at < calculator.text.length()) {
            throw new IllegalArgumentException("cannot go on at \"" + calculator.text.substring(calculator.at) + "\" in " + expression);
        }
        return value;
    }

    /** How far the answer may be off because every number in the expression was rounded to what is written. */
    static double slack(String expression) {
        double slack = 0;
        double written = of(expression);
        Matcher number = Pattern.compile("\\d+(\\.\\d+)?").matcher(expression);
        while (number.find()) {
            double value = Double.parseDouble(number.group());
            double half = 0.5 * Math.pow(10, -Math.max(2, 3 - Math.floor(Math.log10(Math.max(value, 1e-9)))));
            double most = 0;
            for (double near : new double[] {value - half, value + half}) {
                double off = of(expression.substring(0, number.start()) + "(" + new BigDecimal(near).toPlainString() + ")" + expression.substring(number.end()));
                most = Math.max(most, Math.abs(off - written));
            }
            slack += Double.isFinite(most) ? most : 0;
        }
        return slack;
    }

    private double sum() {
        double value = product();
        while (true) {
            if (take('+')) {
                value += product();
            } else if (take('-')) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = signed();
        while (true) {
            if (take('×')) {
                value *= signed();
            } else if (take('/')) {
                value /= signed();
            } else if (at < text.length() && (Character.isLetter(text.charAt(at)) || text.charAt(at) == '(')) {
                value *= power(); // 20 lg(2), 2 pi
            } else {
                return value;
            }
        }
    }

    private double signed() {
        return take('-') ? -power() : power();
    }

    private double power() {
        double value = atom();
        return take('^') ? Math.pow(value, take('-') ? -atom() : atom()) : value;
    }

    private double atom() {
        if (take('(')) {
            double value = sum();
            need(')');
            return value;
        }
        int start = at;
        while (at < text.length() && Character.isLetter(text.charAt(at))) {
            at++;
        }
        if (at > start) {
            return function(text.substring(start, at));
        }
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        return Double.parseDouble(text.substring(start, at));
    }

    private double function(String name) {
        if (name.equals("pi")) {
            return Math.PI;
        }
        need('(');
        double first = sum();
        double value = switch (name.toLowerCase(Locale.ROOT)) {
            case "lg" -> Math.log10(first);
            case "sqrt" -> Math.sqrt(first);
            case "abs" -> Math.abs(first);
            case "cos" -> Math.cos(Math.toRadians(first));
            case "sin" -> Math.sin(Math.toRadians(first));
            case "acos" -> Math.toDegrees(Math.acos(first));
            case "atan" -> Math.toDegrees(Math.atan(first));
            case "max" -> Math.max(first, second());
            case "min" -> Math.min(first, second());
            default -> throw new IllegalArgumentException("no function " + name);
        };
        need(')');
        return value;
    }

    private double second() {
        need(',');
        return sum();
    }

    private boolean take(char sign) {
        boolean there = at < text.length() && text.charAt(at) == sign;
        at += there ? 1 : 0;
        return there;
    }

    private void need(char sign) {
        if (!take(sign)) {
            throw new IllegalArgumentException("no " + sign + " at " + at + " of " + text);
        }
    }
}
