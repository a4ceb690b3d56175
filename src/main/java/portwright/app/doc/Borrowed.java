package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.file.DesignText;

/**
 * Which values of a design are still those of the starter that it was made from: facts of another kiln, burner or room until somebody types
 * the own ones or says that they are right. A state of the window, not of the design file. Places of ports and steps of the firing are plans,
 * not facts, and do not count.
 */
public final class Borrowed {
    private static final List<String> ROOTS = List.of(
            "kiln",
            "shelves",
            "burners",
            "damper",
            "supply",
            "room",
            "firing.load",
            "firing.shelvesMass",
            "firing.prices");
    private static final Set<String> POINT = Set.of("at", "size", "offset");
    private static final Set<String> ONE_FIELD = Set.of("posts", "path", "points", "panels", "flameSafety");
    private static final Pattern ITEM = Pattern.compile("^([^\\[]+)\\[(\\d+)\\](.*)$");

    private final Supplier<DesignText> text;
    private final Runnable heard;
    private final Set<String> own = new TreeSet<>();
    private String starter;
    private DesignText from;
    /** The design to which {@link #all} belongs; null when it has to be counted anew. */
    private DesignText counted;

    private List<String> all = List.of();

    /**
     * @param text the design as it stands
     * @param heard called when other values count as borrowed without an edit
     */
    Borrowed(Supplier<DesignText> text, Runnable heard) {
        this.text = text;
        this.heard = heard;
    }

    /** The design was made from a starter; the values under the keys of {@code right} were said to be right. */
    public void from(String name, DesignText starterText, Set<String> right) {
        starter = name;
        from = starterText;
        own.clear();
        own.addAll(right);
        changed();
    }

    /** The design was made from no starter. */
    void none() {
        starter = null;
        from = null;
        own.clear();
        counted = null;
    }

    private void changed() {
        counted = null;
        heard.run();
    }

    /** Name of the starter; null for a design that was made from none. */
    public String starter() {
        return starter;
    }

    /** Keys of values that are the starter's and were said to be right. */
    public Set<String> right() {
        return Set.copyOf(own);
    }

    /** Whether the value of a field is still the starter's. */
    public boolean is(String path) {
        if (from == null
                || path.matches(".*\\.(name|on|kind)")
                || ROOTS.stream().noneMatch(path::startsWith)) {
            return false;
        }
        String there = inStarter(path);
        return there != null
                && text.get().has(path)
                && text.get().getJson(path).equals(from.getJson(there))
                && !own.contains(key(path));
    }

    /** The value of a field is right for the own kiln. */
    public void confirm(String path) {
        if (is(path)) {
            own.add(key(path));
            changed();
        }
    }

    /** All values of a step are right. */
    public void confirm(Step step) {
        own.addAll(of(step).stream().map(this::key).toList());
        changed();
    }

    /** Fields of a step whose values are still the starter's; Paper counts all. */
    public List<String> of(Step step) {
        if (text.get() != counted) {
            counted = text.get();
            all = new ArrayList<>();
            if (from != null) {
                ROOTS.stream().filter(counted::has).forEach(root -> collect(root, all));
            }
        }
        return all.stream()
                .filter(p -> step == Step.PAPER || Step.ofField(p, "") == step)
                .toList();
    }

    private void collect(String path, List<String> out) {
        DesignText t = text.get();
        String key = path.substring(path.lastIndexOf('.') + 1);
        boolean list = t.getJson(path).orElse("").startsWith("[");
        if (ONE_FIELD.contains(key) || t.get(path).isPresent()) {
            if (is(path)) {
                out.add(path);
            }
        } else if (list) {
            for (int i = 0; i < (POINT.contains(key) ? 2 : t.size(path)); i++) {
                collect(path + "[" + i + "]", out);
            }
        } else {
            t.fields(path).forEach(f -> collect(path + "." + f, out));
        }
    }

    /** The field with its part's name instead of its place in the list: it stays the same when the list changes. */
    private String key(String path) {
        Matcher m = ITEM.matcher(path);
        return !m.matches()
                ? path
                : m.group(1) + "["
                        + text.get()
                                .get(m.group(1) + "[" + m.group(2) + "].name")
                                .orElse(m.group(2)) + "]"
                        + m.group(3);
    }

    /** The same field in the starter, found by the name of its part; a part that only took another name by its place; null when there is none. */
    private String inStarter(String path) {
        Matcher m = ITEM.matcher(path);
        if (!m.matches()) {
            return path;
        }
        String list = m.group(1);
        List<String> there = Parts.names(from, list);
        List<String> here = Parts.names(text.get(), list);
        int i = Integer.parseInt(m.group(2));
        if (i >= here.size()) {
            return null;
        }
        int at = there.indexOf(here.get(i));
        if (at < 0 && i < there.size() && !here.contains(there.get(i))) {
            at = i;
        }
        return at < 0 ? null : list + "[" + at + "]" + m.group(3);
    }
}
