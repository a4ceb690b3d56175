package portwright.calc.firing.record;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One time cell.
 *
 * @param seconds since midnight, or elapsed
 * @param day days since 1970-01-01; NaN without a date
 * @param clock written as a time of day for certain (AM, PM or a date)
 */
record Times(double seconds, double day, boolean clock) {
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,3}):(\\d{2})(?::(\\d{2})(?:[.,](\\d{1,6}))?)?\\s*([ap])?\\.?m?\\.?");
    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})[.](\\d{1,2})[.](\\d{2,4})");
    private static final Pattern SLASHES = Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{2,4})");
    private static final Pattern DURATION =
            Pattern.compile("(?:(\\d{1,3})\\s*h(?:r|rs|ours?)?)?\\s*(?:(\\d{1,4})\\s*m(?:in|ins|inutes?)?)?\\s*(?:(\\d{1,6})\\s*s(?:ec)?)?");

    /** Null when the cell is no time. */
    static Times of(String cell, String dateCell, Heading heading) {
        String text = cell.toLowerCase(Locale.ROOT).replace('t', ' ').replace("z", "").strip();
        double day = Double.NaN;
        String rest = text;
        int space = text.indexOf(' ');
        if (dateCell.isEmpty() && space > 0) {
            double d = day(text.substring(0, space));
            if (!Double.isNaN(d)) {
                day = d;
                rest = text.substring(space + 1).strip();
            }
        } else if (!dateCell.isEmpty()) {
            day = day(dateCell.toLowerCase(Locale.ROOT).strip());
            if (Double.isNaN(day)) {
                return null;
            }
        }
        Matcher m = CLOCK.matcher(rest);
        if (m.matches()) {
            int a = Integer.parseInt(m.group(1));
            int b = Integer.parseInt(m.group(2));
            int c = m.group(3) == null ? 0 : Integer.parseInt(m.group(3));
            double fraction = m.group(4) == null ? 0 : Double.parseDouble("0." + m.group(4));
            if (b > 59 || c > 59) {
                return null;
            }
            if (heading.minutesSeconds() && m.group(3) == null) {
                return new Times(a * 60.0 + b, day, false);
            }
            boolean half = m.group(5) != null;
            if (half) {
                if (a < 1 || a > 12) {
                    return null;
                }
                a = a % 12 + (m.group(5).equals("p") ? 12 : 0);
            }
            if (!Double.isNaN(day) && a > 23) {
                return null;
            }
            return new Times(a * 3600.0 + b * 60.0 + c + fraction, day, half || !Double.isNaN(day));
        }
        if (!Double.isNaN(day)) {
            return null;
        }
        Numbers n = Numbers.of(rest);
        if (n != null && n.unit().isEmpty()) {
            return Double.isNaN(heading.timeUnitS()) || n.value() < 0 ? null : new Times(n.value() * heading.timeUnitS(), day, false);
        }
        Matcher d = DURATION.matcher(rest);
        if (!rest.isEmpty() && d.matches()) {
            return new Times(part(d, 1) * 3600 + part(d, 2) * 60 + part(d, 3), day, false);
        }
        return null;
    }

    private static double part(Matcher m, int group) {
        return m.group(group) == null ? 0 : Double.parseDouble(m.group(group));
    }

    /** Days since 1970-01-01; with slashes the month comes first unless it is above 12. NaN when no date. */
    private static double day(String text) {
        Matcher m = ISO.matcher(text);
        if (m.matches()) {
            return date(m.group(1), m.group(2), m.group(3));
        }
        m = DAY_FIRST.matcher(text);
        if (m.matches()) {
            return date(m.group(3), m.group(2), m.group(1));
        }
        m = SLASHES.matcher(text);
        if (m.matches()) {
            boolean dayFirst = Integer.parseInt(m.group(1)) > 12;
            return date(m.group(3), m.group(dayFirst ? 2 : 1), m.group(dayFirst ? 1 : 2));
        }
        return Double.NaN;
    }

    private static double date(String year, String month, String day) {
        int y = Integer.parseInt(year);
        try {
            return LocalDate.of(y < 100 ? 2000 + y : y, Integer.parseInt(month), Integer.parseInt(day)).toEpochDay();
        } catch (DateTimeException e) {
            return Double.NaN;
        }
    }
}
