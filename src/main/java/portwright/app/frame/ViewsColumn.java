package portwright.app.frame;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.animation.AnimationTimer;
import javafx.geometry.Pos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import portwright.app.board.Board;
import portwright.app.doc.Document;
import portwright.app.doc.Picture;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Palette;
import portwright.app.part.PaintedRegion;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.PartLook;

/** The column of live thumbnails, one a view, and the button that turns the part over. */
final class ViewsColumn extends VBox {
    private static final List<Picture> CARDS =
            List.of(Picture.FLOOR_HOT, Picture.FLOOR_COLD, Picture.LID_COLD, Picture.WALLS_HOT, Picture.SECTION);

    /** The hand rests after so many frames without a change: counted in frames, so that a slow machine does not take a slow drag for rest. */
    private static final int REST_FRAMES = 8;

    /** From this height on, px, cards with short words have room. */
    private static final double WORDS_FROM_PX = 470;

    /** How much a card shows: picture and words, both smaller, or the picture alone. */
    private enum Cards {
        FULL(100, 82, 72),
        SHORT(76, 60, 40),
        BARE(60, 48, 36);

        private final double breadth;
        private final double thumbW;
        private final double thumbH;

        Cards(double breadth, double thumbW, double thumbH) {
            this.breadth = breadth;
            this.thumbW = thumbW;
            this.thumbH = thumbH;
        }
    }

    private final Board board;
    private final List<Card> all = new ArrayList<>();
    private final Button turn = new Button();
    private final Label turnWords = new Label("Turn the\npart over");
    private final TurnArrow arrow = new TurnArrow();
    private final Set<Card> stale = new LinkedHashSet<>();
    private final AnimationTimer brush = new AnimationTimer() {
        @Override
        public void handle(long now) {
            if (++resting > REST_FRAMES) {
                paintOne();
            }
        }
    };
    private int resting;
    private Cards cards = Cards.FULL;

    ViewsColumn(Document doc, Board board) {
        this.board = board;
        setSpacing(4);
        setMinHeight(0);
        ToggleGroup group = new ToggleGroup();
        for (Picture p : CARDS) {
            Card c = new Card(doc, p);
            c.setToggleGroup(group);
            c.setOnAction(e -> {
                c.setSelected(true);
                board.show(c.picture);
            });
            all.add(c);
        }
        turn.getStyleClass().setAll("view-card");
        turnWords.setStyle("-fx-text-alignment: center;");
        VBox box = new VBox(3, arrow, turnWords);
        box.setAlignment(Pos.CENTER);
        turn.setGraphic(box);
        turn.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        turn.setAccessibleText("turn the part over, T");
        turn.setTooltip(new Tooltip("Turn the part over  T"));
        turn.setOnAction(e -> board.press("turn"));
        getChildren().addAll(all);
        getChildren().add(turn);
        size();
        sync();
    }

    void sync() {
        for (Card c : all) {
            boolean mine = board.picture() == c.picture
                    || c.home != Picture.FLOOR_COLD
                            && c.home != Picture.FLOOR_HOT
                            && board.picture().samePart(c.home);
            if (mine) {
                c.set(board.picture());
            }
            c.setSelected(board.picture() == c.picture);
        }
    }

    /** Paints the thumbnails anew once the hand rests, one a frame, so that none of them delays the board. */
    void refresh() {
        stale.addAll(all);
        resting = 0;
        brush.start();
    }

    private void paintOne() {
        if (!stale.isEmpty()) {
            Card next = stale.iterator().next();
            stale.remove(next);
            next.thumb.repaint();
        }
        if (stale.isEmpty()) {
            brush.stop();
        }
    }

    /** Width of the column, px. */
    double breadth() {
        return cards.breadth;
    }

    /** Fits the cards into a narrow window, or one that leaves the column so high, px. */
    void size(boolean narrow, double height) {
        Cards now = !narrow ? Cards.FULL : height < WORDS_FROM_PX ? Cards.BARE : Cards.SHORT;
        if (cards != now) {
            cards = now;
            size();
        }
    }

    private void size() {
        double w = cards.breadth;
        setSpacing(cards == Cards.FULL ? 4 : 1);
        setMinWidth(w);
        setPrefWidth(w);
        setMaxWidth(w);
        for (Card c : all) {
            c.size(cards);
        }
        turn.setMinWidth(w);
        turn.setMaxWidth(w);
        turnWords.setText(cards == Cards.FULL ? "Turn the\npart over" : "Turn over");
        turnWords.setVisible(cards != Cards.BARE);
        turnWords.setManaged(cards != Cards.BARE);
        arrow.setPrefHeight(cards == Cards.SHORT ? 22 : 30);
    }

    /** One thumbnail with its words. */
    private static final class Card extends ToggleButton {
        private final Picture home;
        private Picture picture;
        private boolean brief;
        private final Label words = new Label();
        private final Thumb thumb;
        private final Tooltip tip = new Tooltip();

        Card(Document doc, Picture p) {
            home = p;
            picture = p;
            thumb = new Thumb(doc, this);
            getStyleClass().setAll("view-card");
            VBox box = new VBox(2, thumb, words);
            box.setAlignment(Pos.CENTER);
            setGraphic(box);
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            setTooltip(tip);
            set(p);
        }

        void set(Picture p) {
            picture = p;
            words.setText(brief ? p.brief() : p.caption());
            tip.setText(p.title());
            setAccessibleText("view: " + p.title());
            thumb.repaint();
        }

        void size(Cards cards) {
            setMinWidth(cards.breadth);
            setMaxWidth(cards.breadth);
            thumb.setPrefSize(cards.thumbW, cards.thumbH);
            brief = cards == Cards.SHORT;
            words.setText(brief ? picture.brief() : picture.caption());
            words.setVisible(cards != Cards.BARE);
            words.setManaged(cards != Cards.BARE);
        }

        @Override
        public void fire() {
            setSelected(true);
            super.fire();
            setSelected(true);
        }
    }

    /** The live picture. */
    private static final class Thumb extends PaintedRegion {
        private final Document doc;
        private final Card card;

        Thumb(Document doc, Card card) {
            this.doc = doc;
            this.card = card;
        }

        @Override
        protected void paint(GraphicsContext g, double w, double h, Palette p) {
            Plot plot = new Plot(doc.shapes().geometry(), card.picture, List.of(), PartLook.small());
            Box b = plot.bounds();
            View v = View.fit(b.minX(), b.minY(), b.maxX(), b.maxY(), 0, 0, w, h, 1);
            plot.paint(CanvasPen.thumb(g, v, p, 0.45), b);
        }
    }

    /** An arrow over an axis. */
    private static final class TurnArrow extends PaintedRegion {
        TurnArrow() {
            setPrefSize(60, 30);
        }

        @Override
        protected void paint(GraphicsContext g, double w, double h, Palette p) {
            g.setStroke(p.of(Ink.INK2));
            g.setLineWidth(2.4);
            double c = w / 2;
            g.strokeArc(c - 22, 4, 44, 36, 0, 180, javafx.scene.shape.ArcType.OPEN);
            g.setFill(p.of(Ink.INK2));
            g.fillPolygon(new double[] {c + 16, c + 28, c + 22}, new double[] {17, 17, 26}, 3);
            g.setLineWidth(1.2);
            g.setLineDashes(12, 3, 2, 3);
            g.strokeLine(c - 28, h - 2, c + 28, h - 2);
            g.setLineDashes();
        }
    }
}
