package portwright.calc.firing.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Times as written: a clock, an elapsed time, a bare number with the column's unit.
 *
 * @param seconds since midnight, since the start, or since 1970 where a date stands beside it
 * @param colon written with colons
 * @param half AM or PM stood beside it
 * @param dated a date stood beside it
 */
record Clock(double seconds, boolean colon, boolean half, boolean dated) {
    private static final Pattern COLON = Pattern.compile(
            "(\\d{1,3}):(\\d{1,2})(?::(\\d{1,2}(?:[.,]\\d+)?))?\\s*([ap])?\\.?\\s*m?\\.?(?:z|[+-]\\d\\d:?\\d\\d)?$");
    private static final Pattern HALF = Pattern.compile("(\\d{1,2})\\s*([ap])\\.?m\\.?$");
    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern POINTS =
            Pattern.compile("(?<![\\d.])(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4}|\\d{2})(?![\\d.])");
    private static final Pattern SLASHES =
            Pattern.compile("(?<![\\d/])(\\d{1,2})/(\\d{1,2})/(\\d{4}|\\d{2})(?![\\d/])");
    private static final Pattern LONG = Pattern.compile(
            "(?:(\\d++(?:[.,]\\d++)?+)\\s*h(?:ours?|rs?)?)?\\s*(?:(\\d++(?:[.,]\\d++)?+)\\s*(?:m(?:in(?:utes?)?)?)?)?\\s*(?:(\\d+)\\s*s(?:ec)?)?");

    /** Reads a time; null when it is none. A bare number needs the column's unit. */
    static Clock read(String text, String date, double unitS) {
        if (bare(text)) {
            return Double.isNaN(unitS)
                    ? null
                    : new Clock(Double.parseDouble(text.replace(',', '.')) * unitS, false, false, false);
        }
        String s = text.toLowerCase(Locale.ROOT);
        double day = day(date == null ? s : date);
        boolean dated = !Double.isNaN(day);
        Matcher m = COLON.matcher(s);
        if (m.find() && (m.start() == 0 || " t".indexOf(s.charAt(m.start() - 1)) >= 0)) {
            int h = Integer.parseInt(m.group(1));
            int min = Integer.parseInt(m.group(2));
            double sec = m.group(3) == null ? 0 : Double.parseDouble(m.group(3).replace(',', '.'));
            boolean half = m.group(4) != null;
            if (min > 59 || sec >= 60 || half && (h < 1 || h > 12) || dated && h > 24) {
                return null;
            }
            return new Clock((dated ? day : 0) + hour(h, m.group(4)) * 3600 + min * 60 + sec, true, half, dated);
        }
        Matcher hm = HALF.matcher(s);
        if (hm.find() && Integer.parseInt(hm.group(1)) >= 1 && Integer.parseInt(hm.group(1)) <= 12) {
            return new Clock(
                    (dated ? day : 0) + hour(Integer.parseInt(hm.group(1)), hm.group(2)) * 3600, true, true, dated);
        }
        Matcher l = LONG.matcher(s);
        if (l.matches() && (l.group(1) != null || s.contains("m") || l.group(3) != null)) {
            return new Clock(part(l.group(1)) * 3600 + part(l.group(2)) * 60 + part(l.group(3)), false, false, false);
        }
        return null;
    }

    /** Whether a text is a bare number, whose unit the header must say. */
    static boolean bare(String text) {
        int digits = 0;
        boolean mark = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                digits++;
            } else if ((c == '.' || c == ',') && digits > 0 && !mark) {
                mark = true;
                digits = 0;
            } else {
                return false;
            }
        }
        return digits > 0;
    }

    private static double part(String s) {
        return s == null ? 0 : Double.parseDouble(s.replace(',', '.'));
    }

    private static int hour(int h, String half) {
        return half == null ? h : h % 12 + (half.equals("p") ? 12 : 0);
    }

    /** Seconds to midnight of a date: year first with dashes, day first with points; with slashes month first unless that is above 12. */
    private static double day(String text) {
        if (!text.contains("-") && !text.contains(".") && !text.contains("/")) {
            return Double.NaN;
        }
        Matcher iso = ISO.matcher(text);
        Matcher points = POINTS.matcher(text);
        Matcher slashes = SLASHES.matcher(text);
        if (iso.find()) {
            return day(iso.group(1), iso.group(2), iso.group(3));
        }
        if (points.find()) {
            return day(points.group(3), points.group(2), points.group(1));
        }
        if (slashes.find()) {
            boolean dayFirst = Integer.parseInt(slashes.group(1)) > 12;
            return day(slashes.group(3), slashes.group(dayFirst ? 2 : 1), slashes.group(dayFirst ? 1 : 2));
        }
        return Double.NaN;
    }

    private static double day(String year, String month, String day) {
        int y = Integer.parseInt(year);
        try {
            return LocalDate.of(y < 100 ? 2000 + y : y, Integer.parseInt(month), Integer.parseInt(day))
                            .toEpochDay()
                    * 86400.0;
        } catch (DateTimeException e) {
            return Double.NaN;
        }
    }
}
