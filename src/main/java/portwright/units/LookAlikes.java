package portwright.units;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Signs that look like others: those the trade really types are taken for what they mean, the rest is refused with help. */
final class LookAlikes {
    private static final Map<Character, String> FRACTIONS = Map.ofEntries(
            Map.entry('¼', "1/4"),
            Map.entry('½', "1/2"),
            Map.entry('¾', "3/4"),
            Map.entry('⅛', "1/8"),
            Map.entry('⅜', "3/8"),
            Map.entry('⅝', "5/8"),
            Map.entry('⅞', "7/8"),
            Map.entry('⅓', "1/3"),
            Map.entry('⅔', "2/3"),
            Map.entry('⅕', "1/5"),
            Map.entry('⅖', "2/5"),
            Map.entry('⅗', "3/5"),
            Map.entry('⅘', "4/5"),
            Map.entry('⅙', "1/6"),
            Map.entry('⅚', "5/6"));
    private static final Pattern COMMA = Pattern.compile("(\\d),(\\d)");

    private LookAlikes() {}

    /** Blanks of every width to one blank, fraction signs to figures, the minus sign and the fraction slash to those of the keyboard. */
    static String plain(String typed) {
        StringBuilder b = new StringBuilder();
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            if (FRACTIONS.containsKey(c)) {
                boolean glued = b.length() > 0 && Character.isDigit(b.charAt(b.length() - 1));
                b.append(glued ? " " : "").append(FRACTIONS.get(c));
            } else if (Character.isSpaceChar(c) || c == '\t') {
                if (b.length() > 0 && b.charAt(b.length() - 1) != ' ') {
                    b.append(' ');
                }
            } else if (c == '\u2044' || c == '\u2215') {
                b.append('/');
            } else if (c == '\u2212' || c == '\u2013' || c == '\u2010' || c == '\u2011') {
                b.append('-');
            } else {
                b.append(c);
            }
        }
        return b.toString().strip();
    }

    /** Throws with help for what cannot be meant. */
    static void refuse(String typed, String plain, Kind kind) {
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            if (Character.isISOControl(c) && c != '\t' || Character.getType(c) == Character.FORMAT) {
                throw new QuantityException("\"" + shown(typed) + "\" holds an invisible character (U+"
                        + String.format("%04X", (int) c) + "). Type it anew, such as " + kind.example() + ".");
            }
        }
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (Character.isDigit(c) && (c < '0' || c > '9')) {
                throw new QuantityException(
                        "\"" + shown(typed) + "\" has a digit of another script. Write the figures 0 to 9, such as "
                                + kind.example() + ".");
            }
            if (c == 'º' || c == '˚' || c == '⁰' || c == '∘') {
                throw new QuantityException("\"" + shown(typed) + "\" has the sign " + c
                        + ", which only looks like a degree sign. Write \"" + plain.replace(c, '°') + "\", or deg.");
            }
            boolean letter = Character.isLetter(c)
                    && c != '\u03A9'
                    && c != '\u2126'
                    && Character.UnicodeScript.of(c) != Character.UnicodeScript.LATIN;
            boolean wide = c >= '\uFF01' && c <= '\uFF5E';
            if (letter || wide) {
                throw new QuantityException("\"" + shown(typed) + "\" has the letter " + c
                        + " of another script, which only looks right. Type the unit anew, such as " + kind.example()
                        + ".");
            }
        }
        Matcher m = COMMA.matcher(plain);
        if (m.find()) {
            String point = plain.replaceFirst("(\\d),(\\d)", "$1.$2");
            boolean thousands = plain.matches(".*\\b[1-9]\\d{0,2}(,\\d{3})+\\b.*");
            String whole = plain.replaceAll("(\\d),(\\d{3})", "$1$2");
            throw new QuantityException("\"" + shown(typed) + "\" has a comma. Write \"" + point + "\""
                    + (thousands ? ", or \"" + whole + "\" when thousands are meant" : "") + ".");
        }
        if (plain.matches("[-+]?[0-9]*[lOo][0-9lOo./ ]*[0-9].*")
                || plain.matches("[-+]?[0-9][0-9.]*[Oo][0-9Oo]*\\s.*")) {
            throw new QuantityException("\"" + shown(typed)
                    + "\" has a letter among the figures (l for 1, O for 0). Write figures, such as " + kind.example()
                    + ".");
        }
        if (plain.matches("[-+]?[0-9.]+[eE][-+]?[0-9]+.*")) {
            throw new QuantityException(
                    "\"" + shown(typed) + "\" has an exponent. Write the number out, such as " + kind.example() + ".");
        }
    }

    /** Fit for a message. */
    static String shown(String typed) {
        StringBuilder b = new StringBuilder();
        typed.chars().limit(60).forEach(c -> b.append(Character.isISOControl(c) ? '\uFFFD' : (char) c));
        return b.toString();
    }
}
