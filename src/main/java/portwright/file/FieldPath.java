package portwright.file;

import java.util.ArrayList;
import java.util.List;

/** A field path such as {@code kiln.wall.thickness}, {@code ports[1].at[0]} or {@code limits["element-clearance"]}. */
final class FieldPath {
    /** One step: a name, or an index when the name is null. */
    record Step(String name, int index) {
        @Override
        public String toString() {
            return name == null ? "[" + index + "]" : name;
        }
    }

    private FieldPath() {}

    /** The steps of a path; the empty path has none. */
    static List<Step> parse(String path) {
        List<Step> steps = new ArrayList<>();
        int i = 0;
        while (i < path.length()) {
            char c = path.charAt(i);
            if (c == '[') {
                int end = path.indexOf(']', i);
                if (end < 0) {
                    throw bad(path);
                }
                String inside = path.substring(i + 1, end);
                if (inside.length() >= 2 && inside.startsWith("\"") && inside.endsWith("\"")) {
                    steps.add(new Step(inside.substring(1, inside.length() - 1), -1));
                } else if (inside.matches("\\d{1,7}")) {
                    steps.add(new Step(null, Integer.parseInt(inside)));
                } else {
                    throw bad(path);
                }
                i = end + 1;
            } else {
                if (c == '.') {
                    i++;
                }
                int end = i;
                while (end < path.length() && path.charAt(end) != '.' && path.charAt(end) != '[') {
                    end++;
                }
                if (end == i) {
                    throw bad(path);
                }
                steps.add(new Step(path.substring(i, end), -1));
                i = end;
            }
        }
        return steps;
    }

    /** A field below a path. */
    static String field(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** An item below a path. */
    static String item(String path, int index) {
        return path + "[" + index + "]";
    }

    private static IllegalArgumentException bad(String path) {
        return new IllegalArgumentException("no field path: " + path);
    }
}
