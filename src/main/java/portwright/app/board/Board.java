package portwright.app.board;

import java.util.List;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.util.Duration;
import portwright.app.doc.Background;
import portwright.app.doc.Document;
import portwright.app.doc.Moves;
import portwright.app.doc.Picture;
import portwright.app.doc.Plot;
import portwright.app.doc.RegionDesk;
import portwright.app.doc.View;
import portwright.check.Finding;
import portwright.drawing.PartLook;
import portwright.geometry.Face;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;

/** The drawing, true to scale, between two boxwood rules. Painted once a frame. */
public final class Board extends Region {
    private static final double KEEP_OUT_MM = 25;
    /** How long the numbers of the part under a resting pointer stay. */
    private static final Duration HOVER = Duration.seconds(8);

    private final Document doc;
    private final Region probe = new Region();
    private final Marks marks = new Marks();
    private final BoardKeys keys;
    private final BoardMouse mouse;
    private final BoardPainter painter;
    private final RegionDesk regions;
    private final PauseTransition rest = new PauseTransition(HOVER);
    private Picture picture = Picture.FLOOR_HOT;
    private View view;
    private Plot plot;
    private boolean fitted = true;
    private Runnable onPicture = () -> {};
    private Runnable onRegion = () -> {};
    private SectionWords sectionWords = SectionWords.NONE;

    /** @param flag called with the finding of a stop's flag that is clicked */
    public Board(Document doc, Consumer<Finding> flag) {
        this.doc = doc;
        marks.onFlag = flag;
        getStyleClass().add("board");
        probe.getStyleClass().add("colour-probe");
        probe.setVisible(false);
        probe.setManaged(false);
        probe.backgroundProperty().addListener((o, a, b) -> redraw());
        painter = new BoardPainter(this, doc);
        getChildren().add(probe);
        getChildren().addAll(painter.nodes());
        regions = new RegionDesk(doc, Background.one("portwright region"), Platform::runLater, () -> {
            redraw();
            onRegion.run();
        });
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.NODE);
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        setMinSize(200, 140);
        mouse = new BoardMouse(this, doc);
        mouse.install();
        rest.setOnFinished(e -> mouse.leave());
        keys = new BoardKeys(this, doc);
        keys.install();
        focusedProperty().addListener((o, a, b) -> redraw());
        doc.listen(c -> {
            if (c == Document.Change.DESIGN || c == Document.Change.SELECTION) {
                regions.changed();
            }
            marks.refused = "";
            if (c == Document.Change.SELECTION) {
                speak();
                redraw();
            } else if (c != Document.Change.SAVED) {
                rebuild();
            }
        });
    }

    /** Called when the board turns to another picture by itself. */
    public void onPicture(Runnable run) {
        onPicture = run;
    }

    /** Called when the places of the chosen hole's centre are worked out. */
    public void onRegion(Runnable run) {
        onRegion = run;
    }

    public Picture picture() {
        return picture;
    }

    /** Turns to a picture and fits it. */
    public void show(Picture p) {
        boolean same = picture.samePart(p);
        picture = p;
        marks.clearMeasure();
        plot = null;
        if (!same || fitted || view == null) {
            fit();
        } else {
            view = new View(-view.cx(), view.cy(), view.px(), view.py(), view.scale());
            redraw();
        }
        onPicture.run();
    }

    /** Whether the picture is being fitted to the board whenever that changes its size. */
    public void fit() {
        fitted = true;
        view = null;
        redraw();
    }

    /** Puts back what the hand drags; false when it drags nothing. */
    boolean dropDrag() {
        return mouse.escape();
    }

    Marks marks() {
        return marks;
    }

    /** Words of the last full review for the section. */
    public void sectionWords(SectionWords words) {
        sectionWords = words;
        if (picture == Picture.SECTION) {
            redraw();
        }
    }

    View view() {
        if (view == null) {
            view = Fitted.view(plot(), getWidth(), getHeight());
        }
        return view;
    }

    void view(View v) {
        fitted = false;
        view = v;
        redraw();
    }

    Plot plot() {
        if (plot == null) {
            List<Finding> findings = doc.result().findings();
            plot = new Plot(
                    doc.shapes().geometry(),
                    picture,
                    findings,
                    new PartLook(false, false, KEEP_OUT_MM, units() == UnitSystem.INCH));
        }
        return plot;
    }

    /** The units that lengths are shown in. */
    public UnitSystem units() {
        return Moves.units(doc.text());
    }

    /** Tells a screen reader what is chosen, with its numbers and its worst finding. */
    private void speak() {
        setAccessibleText(
                doc.selected() == null
                        ? picture.title()
                        : String.join(", ", HoverWords.of(plot(), doc, doc.selected(), units())));
        notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
    }

    private void rebuild() {
        plot = null;
        redraw();
    }

    @Override
    protected void layoutChildren() {
        double w = getWidth();
        double h = getHeight();
        painter.resize(w, h);
        if (fitted) {
            view = null;
        }
        if (w >= 40 && h >= 40) {
            painter.paint(probe, marks.region ? regions.region() : null, sectionWords);
        }
    }

    /** Has everything that changed painted in the next frame. */
    public void redraw() {
        requestLayout();
    }

    void onChanged() {
        onPicture.run();
    }

    /** Acts as the key would: used by the hints on the board and by tests. */
    public void press(String action) {
        keys.act(action);
    }

    /** Acts on a letter that was pressed elsewhere in the window; false when it is none of the board's. */
    public boolean letter(KeyEvent e) {
        return keys.letter(e);
    }

    /** Acts on Ctrl with a letter that changes the design; false when it is none of the board's. */
    public boolean chord(KeyEvent e) {
        return keys.chord(e);
    }

    /** The name of the part whose numbers lie beside the pointer; null when none do. */
    public String hovered() {
        return marks.hovered;
    }

    /** The pointer moved: what it tells stays for a while from now on. */
    void pointed() {
        rest.playFromStart();
    }

    /** The hand is at the keys: what the pointer lies on is no news. */
    void keyed() {
        mouse.leave();
    }

    /** Whether the arrow keys move the chosen part; else they slide the drawing. */
    public boolean nudges() {
        return keys.movable();
    }

    public boolean snapping() {
        return marks.snap;
    }

    /** Whether the places of the chosen hole's centre are shown. */
    public boolean showsRegion() {
        return marks.region;
    }

    /** The places of the chosen hole's centre; null while they are worked out, and without a floor or lid hole chosen. */
    public RegionDesk.Region region() {
        return regions.region();
    }

    public boolean measuring() {
        return marks.measuring;
    }

    /** Begins or ends measuring; what was measured goes. */
    void measuring(boolean on) {
        marks.measuring = on;
        marks.clearMeasure();
        setCursor(on ? Cursor.CROSSHAIR : null);
        redraw();
    }

    /** What measuring waits for, or why the last key did nothing; empty when there is nothing to tell. */
    public String measureWords() {
        return marks.words();
    }

    /** Canvas point of a part's point, for tests and pictures. */
    public Pt canvasPoint(Face face, Pt p) {
        Pt q = plot().toPicture(face, p);
        return new Pt(view().x(q.x()), view().y(q.y()));
    }
}
