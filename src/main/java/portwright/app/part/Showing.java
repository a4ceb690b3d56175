package portwright.app.part;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;

/** Something that scrolls and brings what lies in it into sight. */
public interface Showing {
    /** Scrolls to a node that lies in it and gives it the keys. */
    void to(Node n);

    /** Scrolls so that the beginning of a node that lies in it is near the upper edge; the keys stay where they are. */
    void begin(Node n);

    /** Brings it into sight unless its beginning is; the keys stay where they are. */
    void stay(Node n);

    /** What scrolls back to where things stand now. */
    Runnable place();

    /**
     * What puts the scroll of what a form lies in back to where it is now, once all have heard of a change, and keeps the field with the keys in sight: when
     * the field that Tab goes to is built anew meanwhile, the toolkit scrolls to where the old one lay, which is nowhere.
     */
    static Runnable kept(Node form) {
        Optional<Showing> in = around(form);
        Optional<Runnable> back = in.map(Showing::place);
        return () -> back.ifPresent(b -> Platform.runLater(() -> {
            b.run();
            Node owner = form.getScene() == null ? null : form.getScene().getFocusOwner();
            if (owner != null && owner != form && around(owner).equals(in)) {
                in.get().stay(owner);
            }
        }));
    }

    /** Scrolls what a node lies in to its beginning; does nothing where that does not scroll. */
    static void see(Node n) {
        around(n).ifPresent(s -> s.begin(n));
    }

    /** Brings a node into sight in what it lies in; does nothing where that does not scroll. */
    static void of(Node n) {
        around(n).ifPresent(s -> s.to(n));
    }

    private static Optional<Showing> around(Node n) {
        for (Node x = n; x != null; x = x.getParent()) {
            if (x instanceof Showing s) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    /** Lets a heading know the path of its item, for {@link #after}. */
    static void mark(Node heading, String item) {
        heading.getProperties().put(Showing.class, item);
    }

    /** Where an open part is taken out of a list the rest moves up: once all have heard of it, goes to the heading of the item that is asked for then. */
    static void after(Node form, Supplier<String> item) {
        Platform.runLater(() -> {
            Node h = heading(form, item.get());
            if (h != null) {
                of(h);
            }
        });
    }

    /** The node that is marked with a path or with the longest beginning of it; empty where none is. */
    static Optional<Node> nearest(Node form, String path) {
        return form.lookupAll("*").stream()
                .filter(n -> n.getProperties().get(Showing.class) instanceof String at && path.startsWith(at))
                .max(Comparator.comparingInt(n -> ((String) n.getProperties().get(Showing.class)).length()));
    }

    /** The heading of an item in a form; null where it shows none. */
    static Node heading(Node form, String item) {
        return form.lookupAll(".group-toggle").stream()
                .filter(h -> item.equals(h.getProperties().get(Showing.class)))
                .findFirst()
                .orElse(null);
    }
}
