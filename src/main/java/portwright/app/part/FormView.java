package portwright.app.part;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.FieldModel;
import portwright.app.doc.Headings;
import portwright.app.doc.HiddenFields;
import portwright.app.doc.Moves;
import portwright.app.doc.Parts;
import portwright.app.doc.Templates;
import portwright.app.doc.UnderField;
import portwright.file.DesignText;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;
import portwright.units.Unbroken;

/** A ticket: the fields of one object of the design, forms inside it, lists of parts. Follows the design; keeps what is being typed. */
public final class FormView extends VBox {
    private static final Pattern ITEM = Pattern.compile("\\[(\\d+)\\]");

    private final Document doc;
    private final FormSpec spec;
    private final String path;
    private final Set<String> open = new HashSet<>();
    private String signature = "";
    private final DeleteGuard guard = new DeleteGuard(this);
    private List<String> names = List.of();
    private final List<Runnable> refreshers = new ArrayList<>();

    /** @param path full path of the object, or of the list for a list form */
    public FormView(Document doc, FormSpec spec, String path) {
        this.doc = doc;
        this.spec = spec;
        this.path = path;
        setSpacing(8);
        refresh();
    }

    /** Opens the part of that name in a list form. */
    public void open(String item) {
        if (open.add(path + item)) {
            refresh();
        }
    }

    /** Opens every part of a list that a field lies in. */
    public void reveal(String field) {
        Matcher m = ITEM.matcher(field);
        while (m.find()) {
            String list = field.substring(0, m.start());
            int i = Integer.parseInt(m.group(1));
            if (i < doc.text().size(list)) {
                open.add(key(list, i));
            }
        }
        refresh();
    }

    /** Shows the design as it stands. */
    public void refresh() {
        followRename();
        String now = shape(spec, path);
        if (!now.equals(signature)) {
            signature = now;
            refreshers.clear();
            Runnable place = Showing.kept(this);
            HeldKeys.Held held = HeldKeys.in(this);
            guard.built();
            getChildren().clear();
            build(this, spec, path);
            HeldKeys.giveBack(this, held);
            if (held != null) {
                place.run();
            }
        } else {
            refreshers.forEach(Runnable::run);
        }
    }

    /** A part that took another name stays open; nothing is built anew, so the keys stay where they are. */
    private void followRename() {
        if (!spec.list()) {
            return;
        }
        List<String> was = names;
        names = Parts.names(doc.text(), path);
        int at = Parts.renamed(was, names);
        if (at >= 0 && open.remove(path + was.get(at))) {
            open.add(path + names.get(at));
        }
    }

    /** By what an item of a list is remembered as open. */
    private String key(String list, int i) {
        return list + doc.text().get(list + "[" + i + "].name").orElse(String.valueOf(i));
    }

    /** What decides which fields there are. */
    private String shape(FormSpec s, String at) {
        DesignText t = doc.text();
        StringBuilder b = new StringBuilder();
        if (s.list()) {
            for (int i = 0; i < t.size(at); i++) {
                b.append('[').append(open.contains(key(at, i)));
                b.append(shapeOne(s, at + "[" + i + "]")).append(']');
            }
            return b.append(t.has(at)).toString();
        }
        return shapeOne(s, at);
    }

    private String shapeOne(FormSpec s, String at) {
        DesignText t = doc.text();
        StringBuilder b = new StringBuilder().append(t.has(at));
        for (String key : List.of("shape", "on", "kind", "place")) {
            b.append(t.get(at + "." + key).orElse("-"));
        }
        for (FormSpec in : s.inner()) {
            b.append(shape(in, join(at, in.path())));
        }
        return b.toString();
    }

    private static String join(String a, String b) {
        return a.isEmpty() ? b : b.isEmpty() ? a : a + "." + b;
    }

    private void build(VBox box, FormSpec s, String at) {
        if (s.list()) {
            list(box, s, at);
        } else if (s.template() != null && !doc.text().has(at)) {
            Button add = Plain.button("Add " + s.title().toLowerCase(java.util.Locale.ROOT), () -> {
                doc.edit("add " + s.title(), t -> t.set(at, Templates.fill(t, s)));
                HeldKeys.into(this, at);
            });
            Showing.mark(add, at);
            box.getChildren().add(add);
        } else {
            fields(box, s, at);
        }
    }

    private void list(VBox box, FormSpec s, String at) {
        DesignText t = doc.text();
        if (!t.has(at)) {
            Label l = new Label("Not known yet. Add what is there, or say that there is none.");
            l.setWrapText(true);
            l.getStyleClass().addAll("muted", "small");
            box.getChildren().add(l);
        } else if (t.size(at) == 0) {
            Label l = new Label("None.");
            l.getStyleClass().addAll("muted", "small");
            box.getChildren().add(l);
        }
        for (int i = 0; i < t.size(at); i++) {
            String item = at + "[" + i + "]";
            int n = i;
            Supplier<String> name = () -> doc.text()
                    .get(item + ".name")
                    .orElseGet(() -> (n + 1) + "  " + Headings.summary(doc.text(), s, item));
            boolean isOpen = open.contains(key(at, i));
            Button head = toggle("", () -> {
                String key = key(at, n);
                boolean opens = !open.remove(key);
                if (opens) {
                    open.add(key);
                }
                if (doc.text().has(item + ".name")) {
                    doc.select(opens ? name.get() : null);
                }
                refresh();
            });
            follow(() -> head.setText((isOpen ? "▾ " : "▸ ") + name.get() + Headings.aside(doc.text(), at, item)));
            box.getChildren().add(head);
            Showing.mark(head, item);
            Runnable take = () -> {
                doc.edit(
                        "delete " + name.get(), x -> s.path().equals("ports") ? Moves.delete(x, item) : x.remove(item));
                Showing.after(this, () -> at + "[" + Math.min(n, doc.text().size(at) - 1) + "]");
            };
            guard.key(head, take);
            if (isOpen) {
                VBox inner = new VBox(8);
                inner.setStyle("-fx-padding: 0 0 6 10;");
                fields(inner, s, item);
                Button delete = Plain.button("", take);
                // its words may be long: they wrap, the fields beside them keep their breadth
                delete.setMinWidth(0);
                delete.setWrapText(true);
                guard.mouse(delete);
                delete.setMinHeight(USE_PREF_SIZE);
                follow(() -> delete.setText("Delete " + name.get()));
                inner.getChildren().add(delete);
                box.getChildren().add(inner);
            }
        }
        FormSpec whole = KilnCatalog.fittingsWhole();
        if (at.equals("kiln.fittings") && t.has(at)) {
            box.getChildren().add(Plain.words(Headings.WHOLE_LIST));
            fields(box, whole, whole.path());
        }
        HBox row = new HBox(
                8,
                at.equals("kiln.fittings")
                        ? KindMenu.of(kind -> add(s, at, kind))
                        : Plain.button("Add", () -> add(s, at, "")));
        Showing.mark(row.getChildren().get(0), at);
        if (!t.has(at)) {
            row.getChildren()
                    .add(Plain.button(
                            "There is none",
                            () -> doc.edit(
                                    "no " + s.title().toLowerCase(java.util.Locale.ROOT), x -> x.set(at, "[]"))));
        }
        box.getChildren().add(row);
    }

    /** Adds a part, opens it and goes to its first field; {@code kind} is empty where parts have none. */
    private void add(FormSpec s, String at, String kind) {
        String made = at + "[" + doc.text().size(at) + "]";
        if (doc.edit(
                        "add to " + s.title().toLowerCase(java.util.Locale.ROOT),
                        x -> Templates.ofKind(Templates.append(x, s, at), made, kind))
                .isEmpty()) {
            open.add(key(at, doc.text().size(at) - 1));
            refresh();
            HeldKeys.into(this, made);
        }
    }

    /** Does it now and whenever the design changes. */
    private void follow(Runnable show) {
        refreshers.add(show);
        show.run();
    }

    private void fields(VBox box, FormSpec s, String at) {
        DesignText t = doc.text();
        for (FieldSpec f : s.fields()) {
            if (HiddenFields.hidden(t, s, at, f)) {
                continue;
            }
            if (f.type() == FieldSpec.Type.PLACE) {
                PlaceBox p = new PlaceBox(
                        doc, join(at, f.key()), t.get(at + ".on").orElse("").equals("wall") || at.endsWith(".tails"));
                refreshers.add(p::refresh);
                box.getChildren().add(p);
            } else {
                FieldBox b = new FieldBox(new FieldModel(doc, at, f));
                refreshers.add(b::refresh);
                box.getChildren().add(b);
            }
            Supplier<String> told = UnderField.of(doc, at, f);
            if (told != null) {
                Label under = Plain.words("");
                under.managedProperty().bind(under.textProperty().isNotEmpty());
                follow(() -> under.setText(Unbroken.words(told.get())));
                box.getChildren().add(under);
            }
        }
        for (FormSpec in : s.inner()) {
            Label head = new Label(in.title());
            head.getStyleClass().add("section-head");
            box.getChildren().add(head);
            String inner = join(at, in.path());
            build(box, in, inner);
            if (in.template() != null && !in.list() && t.has(inner)) {
                box.getChildren()
                        .add(Plain.button(
                                "Take " + in.title().toLowerCase(java.util.Locale.ROOT) + " away",
                                () -> doc.edit(
                                        "no " + in.title().toLowerCase(java.util.Locale.ROOT), x -> x.remove(inner))));
            }
        }
    }

    static Button toggle(String words, Runnable run) {
        Button b = new Button(words);
        b.getStyleClass().setAll("group-toggle");
        b.setMaxWidth(Double.MAX_VALUE);
        b.setOnAction(e -> run.run());
        return b;
    }
}
