package portwright.app.frame;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import portwright.app.board.Board;
import portwright.app.board.SectionWords;
import portwright.app.doc.Document;
import portwright.app.doc.FindingOrder;
import portwright.app.doc.FootFigures;
import portwright.app.doc.Parts;
import portwright.app.doc.Step;
import portwright.app.doc.VerdictWords;
import portwright.app.part.Typed;
import portwright.app.step.BoardTools;
import portwright.app.step.FiringStep;
import portwright.app.step.KilnStep;
import portwright.app.step.PortsStep;
import portwright.app.step.StepView;

/** The whole window: rail, views, board, side, foot. Lays itself out by the room there is. */
public final class MainView extends Pane {
    /** Less of a board than that is not shown, px. */
    private static final double COVERED_PX = 30;

    private final Document doc;
    private final Board board;
    private final Rail rail;
    private final ViewsColumn views;
    private final StackPane middle = new StackPane();
    private final Side side;
    private final SideColumn column;
    private final Base base = new Base();
    private final BoardTools tools;
    private final Map<Step, StepView> steps = new EnumMap<>(Step.class);
    private final Turns dragged;
    private final Finder find;
    private Step step = Step.PORTS;

    public MainView(Document doc, StepFactory factory) {
        this.doc = doc;
        find = new Finder(this, doc);
        getStyleClass().add("main-view");
        board = new Board(doc, find::slip);
        tools = new BoardTools(board);
        rail = new Rail(doc, this::go, find::first);
        views = new ViewsColumn(doc, board);
        side = new Side(doc, find::show, find::add, p -> find.field(p, ""), this::openDrawer);
        for (Step s : Step.values()) {
            steps.put(
                    s,
                    s == Step.KILN
                            ? new KilnStep(doc, board)
                            : s == Step.PORTS ? new PortsStep(doc, board) : factory.make(s));
        }
        board.onPicture(() -> {
            views.sync();
            tools.sync();
        });
        getChildren().addAll(rail, views, middle);
        column = new SideColumn(side, this);
        getChildren().add(base);
        dragged = new Turns(this, () -> steps.get(step).changed(Document.Change.DESIGN), side::refresh, this::figures);
        base.foot().onVerdict(find::worst);
        doc.listen(this::changed);
        go(Step.PORTS);
        new WindowKeys(this, doc).install();
        FocusIn.fallsTo(this, rail.file(), this::toBoard);
    }

    /** Gives the keys to the board, or to what stands in its place. */
    void toBoard() {
        if (!FocusIn.first(middle.isVisible() ? middle.getChildren().get(0) : side)) {
            middle.getChildren().get(0).requestFocus();
        }
    }

    /** Makes the steps that need more than document and board. */
    public interface StepFactory {
        StepView make(Step step);
    }

    public Board board() {
        return board;
    }

    public Step step() {
        return step;
    }

    public StepView stepView(Step s) {
        return steps.get(s);
    }

    public MenuButton fileMenu() {
        return rail.file();
    }

    /** Messages that stay until someone answers them. */
    public javafx.scene.layout.VBox messages() {
        return side.messages();
    }

    /** Title and file state of the rail. */
    public void fileState(String titleText, String stateText) {
        rail.show(titleText, stateText);
    }

    /** Goes to a step. */
    public void go(Step s) {
        Typed.takeIn(getScene());
        if (s != step) {
            side.lost().leave();
        }
        boolean toPorts = s == Step.PORTS && step != s;
        step = s;
        if (toPorts) {
            leaveOtherParts();
        }
        rail.select(s);
        StepView v = steps.get(s);
        FocusIn.keep(middle, () -> lay(v));
        v.changed(Document.Change.DESIGN);
        v.changed(Document.Change.CHECK);
        side.show(s, v.tickets());
        column.pin(v.pinned());
        foot();
        requestLayout();
    }

    /** A burner or shelf chosen in another step does not stand in the way of the list of ports. */
    private void leaveOtherParts() {
        String path = doc.selected() == null ? null : Parts.path(doc.text(), doc.selected());
        if (path != null && !path.startsWith("ports[")) {
            doc.select(null);
        }
    }

    private void lay(StepView v) {
        if (v.views()) {
            middle.getChildren().setAll(board, tools);
            tools.nudge(step == Step.PORTS);
            views.refresh();
        } else {
            middle.getChildren().setAll(new BoardScroll(v.board()));
        }
    }

    private void changed(Document.Change c) {
        if (c == Document.Change.CHECK) {
            readFire();
        }
        if (c == Document.Change.DESIGN && steps.get(step).views()) {
            views.refresh();
        }
        if (c == Document.Change.DESIGN && doc.dragging()) {
            dragged.start();
            return;
        }
        tools.sync();
        steps.get(step).changed(c);
        if (c != Document.Change.SAVED) {
            side.refresh();
        }
        figures();
        if (c == Document.Change.SELECTION && board.isFocused()) {
            // once all have heard of it and what it opens is laid out
            Platform.runLater(this::row);
        }
    }

    /** What is chosen on the board shows its row; where the keys have gone on meanwhile it keeps what they are at in sight. */
    private void row() {
        Node row = steps.get(step).row();
        if (row != null && board.isFocused() && !doc.dragging()) {
            layout();
            side.stay(row);
        }
    }

    private void figures() {
        rail.refresh();
        foot();
    }

    private void readFire() {
        if (doc.extras().gas() != null
                || doc.review().fire() != null && !doc.review().fire().gas()) {
            board.sectionWords(SectionWords.of(doc.extras(), doc.design().units()));
        }
    }

    private void foot() {
        var f = doc.result().figures();
        var fire = doc.extras().fire();
        base.foot().show(FootFigures.told(FootFigures.of(step, doc.shapes(), f, fire), doc.checking()));
        base.show(step, VerdictWords.of(doc));
        for (Step s : Step.values()) {
            rail.show(s, FindingOrder.count(doc, s));
        }
    }

    /** Lays firing logs over the forecast. */
    public void records(List<Path> logs) {
        go(Step.FIRING);
        if (steps.get(Step.FIRING) instanceof FiringStep f) {
            f.load(logs);
        }
    }

    /** Next finding. */
    public void nextFinding(int by) {
        openDrawer();
        side.next(by);
    }

    Side side() {
        return side;
    }

    Base base() {
        return base;
    }

    Rail rail() {
        return rail;
    }

    /** Moves the keys to the next region. */
    void nextRegion(int by) {
        List<Node> regions = new ArrayList<>(List.of(base, rail, views, middle));
        regions.addAll(column.regions());
        FocusIn.next(getScene().getFocusOwner(), by, regions);
    }

    /** Too small for the side beside the board: it becomes a drawer under the board. */
    private boolean small() {
        return getWidth() < 980 || getHeight() < 600;
    }

    void openDrawer() {
        column.open();
    }

    /** Goes to the side, opening it where it is shut; shuts it where it was opened in a small window. */
    void turnSide() {
        if (small()) {
            column.turn();
        }
        layout();
        if (!column.shows() || !FocusIn.first(side)) {
            toBoard();
        }
    }

    @Override
    protected void layoutChildren() {
        double w = getWidth();
        double h = getHeight();
        boolean drawer = small();
        boolean narrow = w < 1330;
        double top = 96;
        double footH = base.high(w, drawer);
        double gap = narrow ? 8 : 14;
        rail.resizeRelocate(0, 0, w, top);
        base.resizeRelocate(0, h - footH, w, footH);
        double bottom = h - footH - 10;
        double sideW = drawer ? w - 2 * gap : narrow ? 324 : 344;
        boolean cards = steps.get(step).views();
        views.setVisible(cards);
        views.size(narrow, bottom - top);
        double left = gap;
        if (cards) {
            double vw = views.breadth();
            views.resizeRelocate(gap, top, vw, bottom - top);
            left = gap + vw + 10;
        }
        double right = drawer ? w - gap : w - sideW - gap - 14;
        double boardH = bottom - top;
        if (drawer && SideColumn.hasRoom(right - left)) {
            right -= column.aside(left, top, right - left, boardH);
            boardH -= SideColumn.barHeight();
        } else if (drawer) {
            boardH -= column.under(left, top, right - left, boardH);
        } else {
            column.beside(right + 10, top - 4, sideW + 4, bottom - top + 8);
        }
        middle.setVisible(boardH > COVERED_PX);
        middle.resizeRelocate(left, top, right - left, Math.max(0, boardH));
    }
}
