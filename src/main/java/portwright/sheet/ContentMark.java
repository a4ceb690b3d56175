package portwright.sheet;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import portwright.model.Design;
import portwright.model.UserLimit;

/**
 * A short mark of everything that a design says. It stands on every sheet, so that sheets of two versions are not
 * taped together.
 */
public record ContentMark(long number) {
    /** The mark of a design: the start of the SHA-256 of its records as text. */
    public static ContentMark of(Design design) {
        try {
            byte[] d = MessageDigest.getInstance("SHA-256")
                    .digest(inOrder(design).toString().getBytes(StandardCharsets.UTF_8));
            return new ContentMark(ByteBuffer.wrap(d).getLong());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The same design with its limits in the order of their names. */
    private static Design inOrder(Design d) {
        if (d.limits() == null) {
            return d;
        }
        Map<String, Map<String, UserLimit>> limits = new TreeMap<>();
        d.limits().forEach((rule, named) -> limits.put(rule, new TreeMap<>(named)));
        return new Design(
                d.title(),
                d.notes(),
                d.units(),
                d.kiln(),
                d.shelves(),
                d.ports(),
                d.drilling(),
                d.burners(),
                d.damper(),
                d.supply(),
                d.room(),
                d.firing(),
                limits);
    }

    /** Eight hex digits in two groups. */
    public String words() {
        String h = HexFormat.of().toHexDigits(number).substring(0, 8);
        return h.substring(0, 4) + " " + h.substring(4);
    }
}
