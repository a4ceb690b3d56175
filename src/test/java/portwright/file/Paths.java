package portwright.file;

import java.util.ArrayList;
import java.util.List;

/** All field paths of a document. */
final class Paths {
    private Paths() {}

    static List<String> all(DesignText document) {
        List<String> out = new ArrayList<>();
        collect(document, "", out);
        return out;
    }

    private static void collect(DesignText d, String path, List<String> out) {
        List<String> fields = d.fields(path);
        for (String f : fields) {
            String at = FieldPath.field(path, f);
            out.add(at);
            collect(d, at, out);
        }
        if (fields.isEmpty()) {
            for (int i = 0; i < d.size(path); i++) {
                out.add(FieldPath.item(path, i));
                collect(d, FieldPath.item(path, i), out);
            }
        }
    }
}
