package portwright.units;

import java.util.regex.Pattern;

/** Signs that nobody sees and that steer what shows a text: control characters and those that turn the direction of reading. */
public final class PlainSigns {
    /** Stands for a sign that was taken out. */
    public static final char INSTEAD = '\uFFFD';

    /** Signs that turn the direction of reading or end a line, as part of a character class of a regular expression. */
    private static final String TURNING = "\\u061C\\u200E\\u200F\\u2028-\\u202E\\u2066-\\u2069";

    private static final Pattern STEERING = Pattern.compile("[\\p{Cc}" + TURNING + "]");
    private static final Pattern NO_XML = Pattern.compile("[\\p{Cc}\\p{Cs}\\uFFFE\\uFFFF" + TURNING + "]");
    private static final Pattern BLANK = Pattern.compile("[\\s\\p{Cc}" + TURNING + "]+");

    private PlainSigns() {}

    /** Whether the sign steers what shows it; line ends and tabs do too. */
    public static boolean steers(char c) {
        return Character.isISOControl(c)
                || c == '\u061C'
                || c == '\u200E'
                || c == '\u200F'
                || c >= '\u2028' && c <= '\u202E'
                || c >= '\u2066' && c <= '\u2069';
    }

    /** The text with {@link #INSTEAD} for each sign that steers. */
    public static String shown(String text) {
        return STEERING.matcher(text).replaceAll(String.valueOf(INSTEAD));
    }

    /** The text as XML may hold it: signs that steer and halves of pairs become a space. */
    public static String xml(String text) {
        return NO_XML.matcher(text).replaceAll(" ");
    }

    /** The text on one line: blanks and signs that steer, however many, become one space. */
    public static String line(String text) {
        return BLANK.matcher(text).replaceAll(" ");
    }
}
