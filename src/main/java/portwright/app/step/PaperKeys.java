package portwright.app.step;

/** What the G key asks of the Paper step. */
public interface PaperKeys {
    /** Shifts the tile grid off a seam. */
    void shiftGrid();
}
