package portwright.file;

import java.util.Map;
import portwright.model.UserLimit;

/** The design's own limits. */
final class LimitsReader {
    private LimitsReader() {}

    static Map<String, Map<String, UserLimit>> limits(Fields f) {
        f.value("limits");
        return Map.of();
    }
}
