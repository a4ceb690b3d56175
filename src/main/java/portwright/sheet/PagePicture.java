package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import portwright.drawing.Box;
import portwright.drawing.Pen;

/** What was drawn on one page, to be shown by another pen: page millimetres from the lower left corner. */
public final class PagePicture {
    /** Shows clips; the pen alone has none. */
    public interface Stage {
        Pen pen();

        /** What follows stays inside of the box. */
        void clip(Box box);

        void unclip();
    }

    private final double widthMm;
    private final double heightMm;
    private final List<Consumer<Stage>> steps = new ArrayList<>();

    PagePicture(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    void draw(Consumer<Pen> step) {
        steps.add(s -> step.accept(s.pen()));
    }

    void clip(Box box) {
        steps.add(s -> s.clip(box));
    }

    void unclip() {
        steps.add(Stage::unclip);
    }

    /** Draws the page again. */
    public void show(Stage stage) {
        steps.forEach(s -> s.accept(stage));
    }
}
