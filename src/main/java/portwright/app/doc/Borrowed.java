package portwright.app.doc;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import portwright.file.DesignText;

/**
 * Which values of a design are still those of the starter that it was made from: facts of another kiln, burner or room until somebody types
 * the own ones or says that they are right. A state of the window, not of the design file. Steps of the firing count: they are fired as they
 * stand. Places of ports are the plan that is made here and do not.
 */
public final class Borrowed {
    private static final String TITLE = "title";
    private static final List<String> ROOTS = List.of(
            TITLE,
            "kiln",
            "shelves",
            "burners",
            "damper",
            "supply",
            "room",
            "firing.load",
            "firing.shelvesMass",
            "firing.steps",
            "firing.prices");
    private static final Set<String> POINT = Set.of("at", "size", "offset");
    private static final Set<String> ONE_FIELD = Set.of("posts", "path", "points", "panels", "flameSafety");
    private static final Pattern ITEM = Pattern.compile("^([^\\[]+)\\[(\\d+)\\](.*)$");

    private final Supplier<DesignText> text;
    private final Runnable heard;
    private final Set<String> own = new TreeSet<>();

    private String starter;
    private DesignText from;
    /** The design to which {@link #steps} belongs; null when it has to be counted anew. */
    private DesignText counted;

    private final Map<Step, List<String>> steps = new EnumMap<>(Step.class);

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
        return text.get().has(path)
                && inStarter(path).stream()
                        .anyMatch(there -> text.get().getJson(path).equals(from.getJson(there)))
                && !own.contains(key(path));
    }

    /** The value of a field is right for the own kiln. */
    public void confirm(String path) {
        if (is(path)) {
            own.add(key(path));
            changed();
        }
    }

    /** By what the values of a step that are still the starter's are remembered. */
    Set<String> keys(Step step) {
        return new TreeSet<>(of(step).stream().map(this::key).toList());
    }

    /** The values of these keys are right. */
    void confirm(Set<String> keys) {
        own.addAll(keys);
        changed();
    }

    /** The values of these keys are the starter's again. */
    void takeBack(Set<String> keys) {
        own.removeAll(keys);
        changed();
    }

    /** Whether the design still bears the starter's title, which stands on every sheet. */
    public boolean title() {
        return is(TITLE);
    }

    /** How many of the kiln's measures are still the starter's: the title is none. */
    public int unmeasured() {
        return of(Step.KILN).size() - (title() ? 1 : 0);
    }

    /** How many values of a step are still the starter's; {@code asBefore}: as counted last, for while the hand moves what no starter decides. */
    int count(Step step, boolean asBefore) {
        return asBefore ? steps.getOrDefault(step, List.of()).size() : of(step).size();
    }

    /** Fields of a step whose values are still the starter's; Paper counts all. */
    public List<String> of(Step step) {
        if (text.get() != counted) {
            counted = text.get();
            List<String> all = new ArrayList<>();
            if (from != null) {
                ROOTS.stream().filter(counted::has).forEach(root -> collect(root, all));
            }
            steps.clear();
            all.forEach(p -> steps.computeIfAbsent(Step.ofField(p, ""), s -> new ArrayList<>())
                    .add(p));
            steps.put(Step.PAPER, all);
        }
        return steps.getOrDefault(step, List.of());
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

    /** The field with its part's name instead of its place in the list, so that it stays the same when the list changes; without a name, with the value. */
    private String key(String path) {
        Matcher m = ITEM.matcher(path);
        if (!m.matches()) {
            return path;
        }
        Optional<String> name = text.get().get(m.group(1) + "[" + m.group(2) + "].name");
        return m.group(1) + "[" + name.orElse(m.group(2)) + "]" + m.group(3)
                + (name.isPresent() ? "" : "=" + text.get().getJson(path).orElse(""));
    }

    /**
     * Where the starter may hold the same field: by the name of its part; by its place when the part only took another name or has none; of nameless
     * parts, also by its place from the end when some were deleted.
     */
    private List<String> inStarter(String path) {
        Matcher m = ITEM.matcher(path);
        if (!m.matches()) {
            return List.of(path);
        }
        String list = m.group(1);
        List<String> there = Parts.names(from, list);
        List<String> here = Parts.names(text.get(), list);
        int i = Integer.parseInt(m.group(2));
        if (i >= here.size()) {
            return List.of();
        }
        if (!from.has(list + "[0].name")) {
            return IntStream.of(i, i + Math.max(0, there.size() - here.size()))
                    .mapToObj(at -> list + "[" + at + "]" + m.group(3))
                    .toList();
        }
        int at = there.indexOf(here.get(i));
        if (at < 0 && i < there.size() && !here.contains(there.get(i))) {
            at = i;
        }
        return at < 0 ? List.of() : List.of(list + "[" + at + "]" + m.group(3));
    }
}
