package portwright.units;

import java.util.ArrayList;
import java.util.List;
import portwright.units.UnitTable.Unit;

/**
 * Reads quantities: {@code number unit}, or several of them in falling units where the trade does so (feet and inches, pounds and ounces, hours
 * and minutes). A number is a plain decimal, a fraction, or a whole number with a fraction.
 */
final class QuantityParser {
    private static final int LONGEST = 60;
    private static final double ZERO_FAHRENHEIT = 459.67;

    private final String typed;
    private final String s;
    private final Kind kind;
    private int i;

    private QuantityParser(String typed, Kind kind) {
        this.typed = typed;
        this.kind = kind;
        this.s = LookAlikes.plain(typed);
    }

    static Quantity parse(String text, Kind kind) {
        return new QuantityParser(text, kind).read();
    }

    /** One number with its unit. */
    private record Term(double value, boolean whole, Unit unit) {}

    private Quantity read() {
        if (typed.length() > LONGEST) {
            throw new QuantityException("A quantity has at most " + LONGEST + " characters; here are " + typed.length()
                    + ". Write " + kind.example() + ".");
        }
        if (s.isEmpty()) {
            throw say("is empty", "Write " + kind.example() + ".");
        }
        LookAlikes.refuse(typed, s, kind);
        boolean negative = false;
        if (s.charAt(0) == '-' || s.charAt(0) == '+') {
            negative = s.charAt(0) == '-';
            i = 1;
            blanks();
        }
        List<Term> terms = new ArrayList<>();
        do {
            terms.add(term(!terms.isEmpty()));
            blanks();
            if (i < s.length() && s.charAt(i) == '-' && kind == Kind.LENGTH && terms.size() == 1) {
                i++;
                blanks();
            }
        } while (i < s.length());
        double sum = sum(terms);
        return new Quantity(
                typed, kind, absolute(negative ? -sum : sum, terms.get(0).unit()));
    }

    private double sum(List<Term> terms) {
        double sum = 0;
        for (int k = 0; k < terms.size(); k++) {
            Term t = terms.get(k);
            if (k > 0 && !follows(terms.get(k - 1).unit().symbol(), t.unit().symbol())) {
                throw say(
                        "joins " + terms.get(k - 1).unit().symbol() + " and "
                                + t.unit().symbol(),
                        "Write one number with its unit, such as " + kind.example() + ".");
            }
            if (k + 1 < terms.size() && !t.whole()) {
                throw say(
                        "has a part of a " + t.unit().symbol() + " before smaller units",
                        "Write a whole number of " + t.unit().symbol() + " there.");
            }
            sum += t.value() * t.unit().factor();
        }
        return sum;
    }

    private static boolean follows(String first, String second) {
        return switch (first) {
            case "ft" -> second.equals("in");
            case "lb" -> second.equals("oz");
            case "d" -> second.equals("h") || second.equals("min");
            case "h" -> second.equals("min") || second.equals("s");
            case "min" -> second.equals("s");
            default -> false;
        };
    }

    private double absolute(double value, Unit unit) {
        if (kind != Kind.TEMPERATURE) {
            return value;
        }
        double kelvin = switch (unit.symbol()) {
            case "°C" -> value + Celsius.ZERO_C;
            case "°F" -> (value / unit.factor() + ZERO_FAHRENHEIT) * unit.factor();
            default -> value;
        };
        if (kelvin < 0) {
            throw say("is below absolute zero (-273.15 °C)", "Write " + kind.example() + ".");
        }
        return kelvin;
    }

    private Term term(boolean second) {
        int start = i;
        double value = number();
        boolean whole = value == Math.rint(value);
        blanks();
        if (second && i == s.length()) {
            throw say(
                    "has a second number after the first unit", "Write one quantity, such as " + kind.example() + ".");
        }
        Unit unit = unit(s.substring(start, i).strip());
        return new Term(value, whole, unit);
    }

    private double number() {
        double first = decimal();
        boolean whole = first == Math.rint(first);
        if (i < s.length() && s.charAt(i) == '/') {
            if (!whole) {
                throw decimalFraction();
            }
            return fraction(first);
        }
        // a second number, glued by a blank or a hyphen: the fraction of a mixed number
        int j = i;
        while (j < s.length() && (s.charAt(j) == ' ' || s.charAt(j) == '-' && j == i)) {
            j++;
        }
        if (j < s.length() && Character.isDigit(s.charAt(j))) {
            i = j;
            double top = decimal();
            if (i < s.length() && s.charAt(i) == '/') {
                if (!whole) {
                    throw decimalFraction();
                }
                double part = fraction(top);
                if (part >= 1) {
                    throw say(
                            "has a whole number and a fraction of 1 or more",
                            "Write the fraction less than 1, such as 1 1/4 in.");
                }
                return first + part;
            }
            throw say(
                    "has two numbers in a row",
                    "Write one number, such as " + kind.example() + "; no blanks between thousands.");
        }
        return first;
    }

    private QuantityException decimalFraction() {
        return say("mixes a decimal and a fraction", "Write 1.25 in or 1 1/4 in.");
    }

    private double fraction(double top) {
        i++;
        int start = i;
        double bottom = decimal();
        if (!s.substring(start, i).matches("\\d{1,4}") || bottom == 0) {
            throw say("has a fraction that cannot be", "Write " + kind.example() + ".");
        }
        return top / bottom;
    }

    private double decimal() {
        int start = i;
        while (i < s.length() && Character.isDigit(s.charAt(i))) {
            i++;
        }
        if (i + 1 < s.length() && s.charAt(i) == '.' && Character.isDigit(s.charAt(i + 1))) {
            i++;
            while (i < s.length() && Character.isDigit(s.charAt(i))) {
                i++;
            }
        }
        if (i == start) {
            throw say(
                    start == 0 || s.substring(0, start).isBlank()
                            ? "does not begin with a number"
                            : "is not a " + kind.word(),
                    "Write " + kind.example() + ".");
        }
        return Double.parseDouble(s.substring(start, i));
    }

    /** The spelling of the kind that stands here (no two can); a text that is wholly another kind's unit is named as such. */
    private Unit unit(String number) {
        String rest = s.substring(i);
        if (rest.isEmpty() || Character.isDigit(rest.charAt(0))) {
            throw say("has no unit", "Write " + Suggest.withUnit(number, kind) + ".");
        }
        String best = null;
        if (UnitTable.find(kind, rest) != null) {
            best = rest;
        } else if (UnitTable.anywhere(rest).isEmpty()) {
            for (String spelling : UnitTable.spellings(kind)) {
                if (rest.startsWith(spelling) && ends(rest, spelling)) {
                    best = spelling;
                }
            }
        }
        if (best == null) {
            throw new QuantityException(Suggest.unknown(typed, number, rest, kind));
        }
        i += best.length();
        return UnitTable.find(kind, best);
    }

    private static boolean ends(String rest, String spelling) {
        char next = rest.charAt(spelling.length());
        return next == ' ' || next == '-' || Character.isDigit(next);
    }

    private void blanks() {
        while (i < s.length() && s.charAt(i) == ' ') {
            i++;
        }
    }

    private QuantityException say(String what, String write) {
        return new QuantityException("\"" + LookAlikes.shown(typed) + "\" " + what + ". " + write);
    }
}
