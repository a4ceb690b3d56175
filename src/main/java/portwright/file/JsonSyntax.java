package portwright.file;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;

/** Turns a syntax error into a sentence that says what to change. */
final class JsonSyntax {
    private JsonSyntax() {}

    static Problem explain(String text, JsonProcessingException e) {
        JsonLocation at = e.getLocation();
        if (e instanceof JsonEOFException) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            int column = text.length() - text.lastIndexOf('\n');
            return new Problem(line, column, "", "The file ends too early: a closing \", ] or } is missing.");
        }
        if (at == null) {
            return new Problem(0, 0, "", "This is not a JSON text.");
        }
        int offset = (int) Math.min(Math.max(at.getCharOffset(), 0), text.length());
        String sentence = sentence(text, offset, e.getOriginalMessage());
        int back = 0;
        while (sentence.startsWith("NaN")
                && back < offset
                && (Character.isLetter(text.charAt(offset - back - 1)) || text.charAt(offset - back - 1) == '-')) {
            back++;
        }
        return new Problem(at.getLineNr(), at.getColumnNr() - back, "", sentence);
    }

    private static final String CURLY = "\u201C\u201D\u201E\u00AB\u00BB\u2018\u2019";

    private static String sentence(String text, int offset, String technical) {
        char c = offset < text.length() ? text.charAt(offset) : ' ';
        char before = offset > 0 ? text.charAt(offset - 1) : ' ';
        String near = text.substring(offset, Math.min(text.length(), offset + 20));
        String back = text.substring(Math.max(0, offset - 12), offset);
        if (c == '/' || c == '#' || before == '/') {
            return "Comments are not allowed. Write remarks into \"notes\".";
        }
        if (technical.contains("CTRL-CHAR")
                || technical.contains("control character")
                || technical.contains("Illegal character")) {
            return "A control character (a line break or tab) inside a text. Often a closing quote is missing on the line before the break. Write \\n or \\t, or close the text with \" on the same line.";
        }
        if (technical.contains("escape")) {
            return "A backslash in a text must be followed by one of \" \\ / b f n r t u. Write \\\\ for the backslash itself.";
        }
        if (near.startsWith("NaN")
                || near.startsWith("Infinity")
                || near.startsWith("-Infinity")
                || back.endsWith("NaN")
                || back.endsWith("Infinity")
                || technical.contains("NaN")
                || technical.contains("INF")) {
            return "NaN and Infinity are no numbers here. Leave the field out when the value is not known.";
        }
        if (CURLY.indexOf(c) >= 0 || CURLY.indexOf(before) >= 0) {
            return "Curly quotes are no quotes here. Write straight ones: \"…\".";
        }
        if (c == '\'' || before == '\'') {
            return "Texts and names stand in double quotes: \"…\".";
        }
        if (c == '}' || c == ']') {
            String left = text.substring(0, offset).stripTrailing();
            if (left.endsWith(",")) {
                return "A comma before the closing " + c + ". Remove the comma.";
            }
            return "A closing " + c + " that does not fit: each { needs a }, each [ needs a ], each name a value.";
        }
        if (technical.contains("was expecting comma")) {
            return "A comma is missing before this.";
        }
        if (technical.contains("was expecting double-quote to start field name")) {
            return "A field name in double quotes is expected here.";
        }
        if (technical.contains("was expecting a colon")) {
            return "A colon is missing between name and value.";
        }
        if (technical.contains("leading zero") || technical.contains("eading zeroes")) {
            return "A number must not begin with 0 followed by digits. Quantities are texts with a unit: \"0.5 in\".";
        }
        return "This cannot be read as JSON. Expected a text in double quotes, a number, true, false, { or [.";
    }

    /** A name fit for a message: control characters replaced, shortened. */
    static String shown(String s) {
        StringBuilder b = new StringBuilder();
        s.codePoints().limit(60).forEach(c -> b.appendCodePoint(Character.isISOControl(c) ? '\uFFFD' : c));
        return b.length() < s.length() ? b.append('…').toString() : b.toString();
    }
}
