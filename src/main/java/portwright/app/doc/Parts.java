package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import portwright.file.DesignText;

/** Finds named parts in the text. */
public final class Parts {
    /** Lists that hold named parts. */
    public static final List<String> LISTS = List.of("ports", "kiln.elements", "kiln.fittings", "shelves", "burners");

    private Parts() {}

    /** Path of the part of that name; null when there is none. */
    public static String path(DesignText text, String name) {
        for (String list : LISTS) {
            for (int i = 0; i < text.size(list); i++) {
                if (text.get(list + "[" + i + "].name").orElse("").equals(name)) {
                    return list + "[" + i + "]";
                }
            }
        }
        return null;
    }

    /** The list a part's path lies in. */
    public static String listOf(String path) {
        int cut = path.lastIndexOf('[');
        return cut < 0 ? path : path.substring(0, cut);
    }

    /** Names in a list. */
    public static List<String> names(DesignText text, String list) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < text.size(list); i++) {
            out.add(text.get(list + "[" + i + "].name").orElse("" + (i + 1)));
        }
        return out;
    }

    /** Index of the one name that changed between two states of a list; −1 when none or more did. */
    public static int renamed(List<String> was, List<String> is) {
        int at = -1;
        for (int i = 0; i < is.size() && was.size() == is.size(); i++) {
            if (!was.get(i).equals(is.get(i))) {
                if (at >= 0) {
                    return -1;
                }
                at = i;
            }
        }
        return at;
    }

    /** What a part is called in the next text: it stays the same part when it takes another name; null when it is gone. */
    public static String followed(DesignText was, DesignText is, String name) {
        String path = name == null ? null : path(was, name);
        if (path == null) {
            return name;
        }
        String list = listOf(path);
        List<String> names = names(is, list);
        int at = renamed(names(was, list), names);
        String next = at >= 0 && path.equals(list + "[" + at + "]") ? names.get(at) : name;
        return path(is, next) == null ? null : next;
    }
}
