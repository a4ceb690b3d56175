package portwright.app.frame;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.layout.VBox;
import portwright.app.doc.AllMine;
import portwright.app.doc.Document;
import portwright.app.doc.OnTemplate;
import portwright.app.doc.Step;
import portwright.app.part.SlipView;

/** Says at a step how many of its values are still the starter's, and at Paper where they are. */
final class BorrowedSlip extends VBox {
    private record Shown(Step step, List<Integer> counts, String first, boolean asks) {}

    private final Document doc;
    private final Consumer<String> go;
    private Shown shown;
    /** The step that is asked about; null for none. */
    private Step asked;

    /** @param go shows the field of a path */
    BorrowedSlip(Document doc, Consumer<String> go) {
        super(8);
        this.doc = doc;
        this.go = go;
    }

    void show(Step step) {
        List<String> all = doc.borrowed().of(step);
        Shown now = new Shown(
                step,
                Stream.of(Step.values()).map(s -> doc.borrowed().of(s).size()).toList(),
                all.isEmpty() ? "" : all.get(0),
                asked == step && !all.isEmpty());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        getChildren().clear();
        if (!all.isEmpty()) {
            getChildren()
                    .add(step == Step.PAPER ? paper(now) : now.asks ? sure(step, all.size()) : step(step, all.size()));
        }
        setVisible(!getChildren().isEmpty());
        setManaged(isVisible());
    }

    /** Asks before many values are taken at once. */
    private SlipView sure(Step step, int n) {
        return SlipView.note(
                n == 1 ? "Is this 1 value yours?" : "Are all " + n + " values yours?",
                "Each then counts as measured on your kiln, and loses its mark ◇. Undo brings the marks back.",
                Notices.button(n == 1 ? "Yes, it is mine" : "Yes, all " + n + " are mine", () -> {
                    asked = null;
                    AllMine.say(doc, step);
                }),
                Notices.button("Cancel", () -> ask(step, null)));
    }

    private void ask(Step step, Step about) {
        asked = about;
        show(step);
    }

    private static String head(int n) {
        return "◇ " + n + (n == 1 ? " value is still the starter's" : " values are still the starter's");
    }

    private SlipView step(Step step, int n) {
        return SlipView.note(
                head(n),
                "Each is marked ◇: it is the example's, not measured on yours. Type your own, or confirm one by one"
                        + " with Enter in its field, or all at once here.",
                Notices.button(n == 1 ? "This one is mine" : "All " + n + " here are mine", () -> ask(step, step)));
    }

    private SlipView paper(Shown now) {
        String where = Stream.of(Step.values())
                .filter(s -> s != Step.PAPER && now.counts.get(s.ordinal()) > 0)
                .map(s -> s.word() + " " + now.counts.get(s.ordinal()))
                .collect(Collectors.joining(", "));
        return SlipView.caution(
                head(now.counts.get(Step.PAPER.ordinal())),
                (doc.borrowed().title()
                                ? "The title is the starter's too: \""
                                        + doc.text().get("title").orElse("") + "\" stands on every sheet. "
                                : "")
                        + where
                        + ". The template is drawn with "
                        + OnTemplate.count(doc.borrowed().of(Step.PAPER))
                        + " of them; the others change figures and findings only. Holes drilled after another kiln's"
                        + " measures do not fit yours: measure before you drill.",
                Notices.button("Show the first", () -> go.accept(now.first)));
    }
}
