package portwright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

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

    /** The text of a tree, lines ended by \n. */
    public static String text(JsonNode node) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        try {
            return MAPPER.writer(new DefaultPrettyPrinter()
                                    .withObjectIndenter(indent)
                                    .withArrayIndenter(indent))
                            .writeValueAsString(node)
                    + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
