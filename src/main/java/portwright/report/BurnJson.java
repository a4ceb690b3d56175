package portwright.report;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import portwright.review.BurnState;

/** The fire at several damper settings as one JSON array. */
public final class BurnJson {
    private BurnJson() {}

    /** Pretty-printed array with a final newline; figures that do not exist are null, {@code why} says why, {@code stops} what forbids the state. */
    public static String write(List<BurnState> states, List<List<String>> stops) {
        ObjectMapper mapper = new ObjectMapper();
        ArrayNode array = mapper.createArrayNode();
        for (int i = 0; i < states.size(); i++) {
            ObjectNode all = mapper.valueToTree(states.get(i));
            ObjectNode o = array.addObject();
            all.properties().forEach(e -> {
                if (e.getValue().isNumber()) {
                    Json.number(o, e.getKey(), e.getValue().asDouble());
                } else {
                    o.set(e.getKey(), e.getValue());
                }
            });
            stops.get(i).forEach(o.putArray("stops")::add);
            Json.codes(o);
        }
        return Json.text(array);
    }
}
