package portwright.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import portwright.units.PlainSigns;

/**
 * What goes to a terminal: a name in a design, a log or a path must not steer it. Control characters and those that turn the direction of
 * reading become U+FFFD; line ends, tabs and our own colours pass.
 */
final class PlainWriter extends FilterWriter {
    private static final char ESCAPE = '\u001B';
    private static final int LONGEST_COLOUR = 12;

    private final StringBuilder held = new StringBuilder();

    private final boolean colours;

    /** @param colours whether colours pass; on a terminal without them nobody but a name could have sent one */
    PlainWriter(Writer out, boolean colours) {
        super(out);
        this.colours = colours;
    }

    @Override
    public void write(int c) throws IOException {
        char ch = (char) c;
        if (held.length() > 0 || ch == ESCAPE) {
            colour(ch);
        } else {
            out.write(steers(ch) ? PlainSigns.INSTEAD : ch);
        }
    }

    /** Holds a sequence back until it is known to be a colour. */
    private void colour(char ch) throws IOException {
        held.append(ch);
        boolean open = held.length() == 1
                || held.length() == 2 && ch == '['
                || held.length() > 2 && held.length() < LONGEST_COLOUR && (ch == ';' || ch >= '0' && ch <= '9');
        if (open) {
            return;
        }
        if (colours && ch == 'm' && held.length() > 2) {
            out.write(held.toString());
            held.setLength(0);
        } else {
            release();
        }
    }

    private void release() throws IOException {
        String text = held.toString();
        held.setLength(0);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            out.write(steers(c) || c == ESCAPE ? PlainSigns.INSTEAD : c);
        }
    }

    private static boolean steers(char c) {
        return PlainSigns.steers(c) && c != '\n' && c != '\r' && c != '\t';
    }

    @Override
    public void write(char[] b, int off, int len) throws IOException {
        for (int i = off; i < off + len; i++) {
            write(b[i]);
        }
    }

    @Override
    public void write(String s, int off, int len) throws IOException {
        for (int i = off; i < off + len; i++) {
            write(s.charAt(i));
        }
    }

    @Override
    public void flush() throws IOException {
        release();
        super.flush();
    }
}
