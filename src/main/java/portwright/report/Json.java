package portwright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import portwright.data.LocalCodes;

/** Small helpers for JSON results: finite numbers only, a final newline. */
public final class Json {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}

    /** An empty object. */
    public static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** Adds a number; null, NaN and infinity become null. */
    public static ObjectNode number(ObjectNode o, String name, Double value) {
        return value == null || !Double.isFinite(value) ? o.putNull(name) : o.put(name, value);
    }

    /** Control characters beyond ASCII and those that turn the direction of reading are written as escapes; they occur in texts only. */
    private static void append(StringBuilder b, int c) {
        if (c >= 0x7F && c <= 0x9F || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069) {
            b.append(String.format("\\u%04x", c));
        } else {
            b.appendCodePoint(c);
        }
    }

    /** Adds whose word comes before the figures. */
    static ObjectNode codes(ObjectNode o) {
        return o.put("localCodes", LocalCodes.FIRST);
    }

    /** The text of a tree, lines ended by \n. */
    public static String text(JsonNode node) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        try {
            return MAPPER.writer(new DefaultPrettyPrinter()
                                    .withObjectIndenter(indent)
                                    .withArrayIndenter(indent))
                            .writeValueAsString(node)
                            .codePoints()
                            .collect(StringBuilder::new, Json::append, StringBuilder::append)
                    + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
