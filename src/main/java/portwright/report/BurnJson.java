package portwright.report;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import portwright.review.BurnState;

/** The fire at several damper settings as one JSON array. */
public final class BurnJson {
    private BurnJson() {}

    /** Pretty-printed array with a final newline; figures that do not exist are null, {@code why} says why. */
    public static String write(List<BurnState> states) {
        ObjectMapper mapper = new ObjectMapper();
        ArrayNode array = mapper.createArrayNode();
        for (BurnState s : states) {
            ObjectNode all = mapper.valueToTree(s);
            ObjectNode o = array.addObject();
            all.fields().forEachRemaining(e -> {
                if (e.getValue().isNumber()) {
                    Json.number(o, e.getKey(), e.getValue().asDouble());
                } else {
                    o.set(e.getKey(), e.getValue());
                }
            });
        }
        return Json.text(array);
    }
}
