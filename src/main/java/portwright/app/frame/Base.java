package portwright.app.frame;

import javafx.scene.layout.Pane;
import portwright.app.doc.Care;
import portwright.app.doc.Step;
import portwright.app.doc.VerdictWords;

/** What stands below every step: figures and verdict, and under them the caution that matters there. */
final class Base extends Pane {
    private static final double FOOT_PX = 72;
    /** The foot of a window too small for the side beside the board, px. */
    private static final double LOW_PX = 58;

    private final Foot foot = new Foot();
    private final CareLine care = new CareLine(Care.PORTS);
    private boolean low;

    Base() {
        getChildren().addAll(foot, care);
    }

    Foot foot() {
        return foot;
    }

    CareLine care() {
        return care;
    }

    /** Shows the verdict and the caution of a step. */
    void show(Step step, VerdictWords verdict) {
        foot.show(verdict);
        care.show(Care.of(step));
    }

    /**
     * Height that it takes, px.
     *
     * @param small whether the window is too small for the side beside the board
     */
    double high(double width, boolean small) {
        low = small;
        return footPx() + care.high(width);
    }

    private double footPx() {
        return low ? LOW_PX : FOOT_PX;
    }

    @Override
    protected void layoutChildren() {
        foot.low(low);
        foot.resizeRelocate(0, 0, getWidth(), footPx());
        care.resizeRelocate(0, footPx(), getWidth(), getHeight() - footPx());
    }
}
