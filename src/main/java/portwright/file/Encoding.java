package portwright.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Bytes to text: UTF-8 without a mark, nothing else. */
final class Encoding {
    private Encoding() {}

    /** The text, or null with a problem added. */
    static String text(byte[] bytes, List<Problem> problems) {
        if (bytes == null) {
            return null;
        }
        String wrong = mark(bytes);
        if (wrong != null) {
            problems.add(new Problem(1, 1, "", wrong));
            return null;
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CoderResult result = decoder.decode(in, out, true);
        String good = out.flip().toString();
        int line = 1 + (int) good.chars().filter(c -> c == '\n').count();
        int column = good.length() - good.lastIndexOf('\n');
        int zero = good.indexOf('\0');
        if (zero >= 0) {
            String head = good.substring(0, zero);
            problems.add(new Problem(
                    1 + (int) head.chars().filter(c -> c == '\n').count(),
                    zero - head.lastIndexOf('\n'),
                    "",
                    "A zero byte: this is no text file, or it is saved as UTF-16. Save it as UTF-8."));
            return null;
        }
        if (result.isError()) {
            problems.add(new Problem(
                    line,
                    column,
                    "",
                    String.format(
                            "Byte 0x%02X is no UTF-8; the file seems to be saved in an old encoding such as Latin-1. Save it as UTF-8.",
                            bytes[in.position()])));
            return null;
        }
        return good;
    }

    private static String mark(byte[] b) {
        if (b.length >= 3 && (b[0] & 0xFF) == 0xEF && (b[1] & 0xFF) == 0xBB && (b[2] & 0xFF) == 0xBF) {
            return "The file begins with a byte-order mark. Save it as UTF-8 without the mark (\"UTF-8\", not \"UTF-8 with BOM\").";
        }
        if (b.length >= 2
                && ((b[0] & 0xFF) == 0xFF && (b[1] & 0xFF) == 0xFE || (b[0] & 0xFF) == 0xFE && (b[1] & 0xFF) == 0xFF)) {
            return "The file is saved as UTF-16. Save it as UTF-8.";
        }
        return null;
    }
}
