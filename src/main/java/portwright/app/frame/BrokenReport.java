package portwright.app.frame;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import portwright.app.part.Sign;
import portwright.file.Problem;

/** The report of a broken file: every error with its line shown, and ways on. */
final class BrokenReport extends VBox {
    private static final int AROUND = 2;

    BrokenReport(Path path, String text, List<Problem> problems, Runnable again, Runnable other, Runnable back) {
        getStyleClass().add("card-window");
        setSpacing(14);
        Label head = new Label(path.getFileName() + ": " + problems.size()
                + (problems.size() == 1 ? " error" : " errors") + ". Nothing was changed.");
        head.getStyleClass().add("board-heading");
        Label how = new Label("Mend the lines in a text editor, then read again.");
        how.getStyleClass().add("muted");
        HBox line = new HBox(12, Sign.STOP.draw(34), new VBox(2, head, how));
        VBox list = new VBox(10);
        List<String> lines = text.lines().toList();
        for (Problem p : problems) {
            list.getChildren().add(one(p, lines));
        }
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        HBox buttons = new HBox(
                10,
                Notices.button("Read again", again),
                Notices.button("Open another…", other),
                Notices.button("Back to the board", back));
        getChildren().addAll(line, scroll, buttons);
    }

    /** Letters of a line that fit at the largest size. */
    private static final int SHOWN = 56;

    private static VBox one(Problem p, List<String> lines) {
        Label where = new Label((p.line() > 0 ? "line " + p.line() + ", column " + p.column() : "the file")
                + (p.path().isEmpty() ? "" : " · " + p.path()));
        where.getStyleClass().add("slip-head");
        where.setWrapText(true);
        Label words = new Label(p.message());
        words.setWrapText(true);
        VBox box = new VBox(4, where, words);
        box.getStyleClass().add("ticket");
        for (int i = p.line() - AROUND; p.line() > 0 && i <= p.line() + AROUND; i++) {
            if (i >= 1 && i <= lines.size()) {
                String line = lines.get(i - 1).replace("\t", "    ");
                Label l = new Label(String.format("%4d  %s", i, part(line, i == p.line() ? p.column() : 1)));
                l.getStyleClass().add("mono");
                l.setMaxWidth(Double.MAX_VALUE);
                if (i == p.line()) {
                    l.getStyleClass().add("broken-line");
                }
                box.getChildren().add(l);
                if (i == p.line() && p.column() > 0 && p.column() < 400) {
                    Label caret = new Label(" ".repeat(5 + p.column() - cut(lines.get(i - 1), p.column())) + "^");
                    caret.getStyleClass().add("mono");
                    box.getChildren().add(caret);
                }
            }
        }
        return box;
    }

    /** What is left out of a line before a column, so that the largest letters still show the fault. */
    static int cut(String line, int column) {
        return line.length() <= SHOWN ? 0 : Math.max(0, Math.min(column - SHOWN / 2, line.length() - SHOWN));
    }

    /** As much of a line as the largest letters have room for, round a column. */
    static String part(String line, int column) {
        int from = cut(line, column);
        return line.substring(from, Math.min(line.length(), from + SHOWN));
    }
}
