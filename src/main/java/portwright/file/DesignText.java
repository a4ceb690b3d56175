package portwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import portwright.file.FieldPath.Step;
import portwright.file.Json.Member;
import portwright.file.Json.Spot;

/**
 * A design file as an immutable document: every value as typed, every field in its place. An edit answers a new document that shares all that
 * was not touched with the old one, so that thousands of steps can be undone.
 *
 * <p>Paths: {@code kiln.wall.thickness}, {@code ports[1].at[0]}, {@code limits["element-clearance"]}; the empty path is the whole.
 * Values given to {@link #set} and {@link #insert} are JSON texts; {@link #text} makes one of a word.
 */
public final class DesignText {
    private final Json root;
    private final boolean edited;

    private DesignText(Json root, boolean edited) {
        this.root = root;
        this.edited = edited;
    }

    static DesignText of(Json root) {
        return new DesignText(root, false);
    }

    /** Reads a text; the result has no document when it is no JSON. */
    public static ReadResult read(String text) {
        List<Problem> problems = new ArrayList<>();
        Json root = text.length() > DesignFile.MAX_BYTES ? tooLarge(problems) : JsonTree.parse(text, problems);
        if (root == null) {
            return new ReadResult(null, null, problems);
        }
        return DesignReader.read(root, of(root), problems);
    }

    private static Json tooLarge(List<Problem> problems) {
        problems.add(new Problem(0, 0, "", DesignFile.TOO_LARGE));
        return null;
    }

    /** The design in this document, or everything wrong with it; places are those of {@link #toText()}. */
    public ReadResult read() {
        ReadResult quick = DesignReader.read(root, this, new ArrayList<>());
        if (quick.ok() || !edited) {
            return quick;
        }
        List<Problem> problems = new ArrayList<>();
        Json placed = JsonTree.parse(toText(), problems);
        return DesignReader.read(placed, this, problems);
    }

    /** The document in canonical form: two spaces, short objects and lists on one line. Values keep their characters. */
    public String toText() {
        return JsonWriter.write(root);
    }

    /** A text value for {@link #set} and {@link #insert}. */
    public static String text(String value) {
        return JsonWriter.quote(value);
    }

    /** Whether there is a value at the path. */
    public boolean has(String path) {
        return find(path) != null;
    }

    /** The text at the path as typed (a quantity, a name, a word); numbers and truth values as written; empty for objects, lists and nothing. */
    public Optional<String> get(String path) {
        Json v = find(path);
        if (v instanceof Json.Text t) {
            return Optional.of(t.value());
        }
        return v instanceof Json.Num || v instanceof Json.Bool ? Optional.of(literal(v)) : Optional.empty();
    }

    /** The value at the path as JSON text in canonical form. */
    public Optional<String> getJson(String path) {
        return Optional.ofNullable(find(path)).map(v -> JsonWriter.write(v).stripTrailing());
    }

    /** Number of items of the list, or of fields of the object, at the path; 0 when there is none. */
    public int size(String path) {
        Json v = find(path);
        return v instanceof Json.Arr a
                ? a.items().size()
                : v instanceof Json.Obj o ? o.members().size() : 0;
    }

    /** Names of the fields of the object at the path, in order. */
    public List<String> fields(String path) {
        return find(path) instanceof Json.Obj o
                ? o.members().stream().map(Member::name).toList()
                : List.of();
    }

    /** Puts a text (a quantity, name or word) at the path; missing objects on the way are made, a new field goes to the end. */
    public DesignText setText(String path, String value) {
        return set(path, text(value));
    }

    /** Puts a JSON value at the path; missing objects on the way are made, a new field goes to the end. */
    public DesignText set(String path, String json) {
        Json value = json(json);
        List<Step> steps = FieldPath.parse(path);
        return new DesignText(steps.isEmpty() ? value : put(root, steps, 0, path, old -> value), true);
    }

    /** Inserts a JSON value into a list before the index that ends the path ({@code ports[2]}); the list's length appends. A missing list is made. */
    public DesignText insert(String path, String json) {
        Json value = json(json);
        List<Step> steps = FieldPath.parse(path);
        Step last = last(steps, path);
        if (last.name() != null) {
            throw new IllegalArgumentException("insert wants an index at the end of " + path);
        }
        return at(steps.subList(0, steps.size() - 1), path, old -> {
            List<Json> items =
                    new ArrayList<>(old == null ? List.of() : array(old, path).items());
            if (last.index() > items.size()) {
                throw new IllegalArgumentException("no place " + path);
            }
            items.add(last.index(), value);
            return new Json.Arr(items, Spot.NONE);
        });
    }

    /** Adds a JSON value to the end of the list at the path; a missing list is made. */
    public DesignText append(String listPath, String json) {
        return insert(FieldPath.item(listPath, size(listPath)), json);
    }

    /** Takes the field or item away; a document without it is answered unchanged. */
    public DesignText remove(String path) {
        if (!has(path)) {
            return this;
        }
        List<Step> steps = FieldPath.parse(path);
        Step last = last(steps, path);
        return at(steps.subList(0, steps.size() - 1), path, old -> {
            if (last.name() != null) {
                Json.Obj o = object(old, path);
                return new Json.Obj(
                        o.members().stream()
                                .filter(m -> !m.name().equals(last.name()))
                                .toList(),
                        o.spot());
            }
            List<Json> items = new ArrayList<>(array(old, path).items());
            items.remove(last.index());
            return new Json.Arr(items, old.spot());
        });
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof DesignText d && (d.root == root || d.toText().equals(toText()));
    }

    @Override
    public int hashCode() {
        return toText().hashCode();
    }

    private DesignText at(List<Step> steps, String path, UnaryOperator<Json> change) {
        return new DesignText(steps.isEmpty() ? change.apply(root) : put(root, steps, 0, path, change), true);
    }

    private static Json put(Json node, List<Step> steps, int i, String path, UnaryOperator<Json> change) {
        if (i == steps.size()) {
            return change.apply(node);
        }
        Step step = steps.get(i);
        if (step.name() == null) {
            if (node == null) {
                throw new IllegalArgumentException("no place " + path);
            }
            List<Json> items = new ArrayList<>(array(node, path).items());
            if (step.index() >= items.size()) {
                throw new IllegalArgumentException("no place " + path);
            }
            items.set(step.index(), put(items.get(step.index()), steps, i + 1, path, change));
            return new Json.Arr(items, node.spot());
        }
        Json.Obj o = node == null ? new Json.Obj(List.of(), Spot.NONE) : object(node, path);
        List<Member> members = new ArrayList<>(o.members());
        for (int k = 0; k < members.size(); k++) {
            Member m = members.get(k);
            if (m.name().equals(step.name())) {
                members.set(k, new Member(m.name(), m.spot(), put(m.value(), steps, i + 1, path, change)));
                return new Json.Obj(members, o.spot());
            }
        }
        members.add(new Member(step.name(), Spot.NONE, put(null, steps, i + 1, path, change)));
        return new Json.Obj(members, o.spot());
    }

    private Json find(String path) {
        Json node = root;
        for (Step step : FieldPath.parse(path)) {
            if (step.name() != null) {
                node = node instanceof Json.Obj o ? o.get(step.name()) : null;
            } else {
                node = node instanceof Json.Arr a && step.index() < a.items().size()
                        ? a.items().get(step.index())
                        : null;
            }
        }
        return node;
    }

    private static Json json(String text) {
        List<Problem> problems = new ArrayList<>();
        Json value = JsonTree.parse(text, problems);
        if (value == null || !problems.isEmpty()) {
            throw new IllegalArgumentException("no JSON value: " + text);
        }
        return value;
    }

    private static String literal(Json v) {
        return v instanceof Json.Num n ? n.raw() : v.word();
    }

    private static Step last(List<Step> steps, String path) {
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("no field path: \"" + path + "\"");
        }
        return steps.get(steps.size() - 1);
    }

    private static Json.Obj object(Json v, String path) {
        if (v instanceof Json.Obj o) {
            return o;
        }
        throw new IllegalArgumentException("no object on the way to " + path);
    }

    private static Json.Arr array(Json v, String path) {
        if (v instanceof Json.Arr a) {
            return a;
        }
        throw new IllegalArgumentException("no list on the way to " + path);
    }
}
