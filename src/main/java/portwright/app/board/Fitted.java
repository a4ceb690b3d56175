package portwright.app.board;

import portwright.app.doc.Picture;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.app.paint.Fonts;
import portwright.app.paint.RulePainter;
import portwright.app.paint.TextSizes;
import portwright.drawing.Box;
import portwright.drawing.TextStyle;
import portwright.geometry.GrooveSolid;

/** The view in which a picture and the words round it fill the board between its rules. Lengths in px. */
final class Fitted {
    /** Room over the walls for their numbers and the tape above these. */
    private static final double LID_TAPE_PX = 66;
    /** Room under the walls for the key hint in the corner, on a board from that height on. */
    private static final double HINT_PX = 50;

    private static final double HINT_FROM_PX = 360;
    /** Room under the section for the tape along the board's lower edge. */
    private static final double SECTION_TAPE_PX = 52;

    private static final double LOW_SECTION_TAPE_PX = 40;
    /** What the elements' names beside the walls keep from the rule and from the walls, both together. */
    private static final double NAME_PX = 20;

    private Fitted() {}

    static View view(Plot plot, double width, double height) {
        Picture picture = plot.picture();
        Box b = plot.bounds();
        double margin = width < 560 || height < 460 ? 26 : 62;
        double room = picture == Picture.SECTION ? SectionDeck.kept(width) : 0;
        double extra = picture == Picture.SECTION ? 150 : 0;
        double tape = picture.walls() ? Math.max(0, LID_TAPE_PX - margin) : 0;
        double names = picture.walls() ? Math.max(0, names(plot) - margin) : 0;
        double hint = Math.max(0, foot(picture, height) - margin);
        double left = RulePainter.BREADTH;
        return View.fit(
                b.minX(),
                b.minY() - extra,
                b.maxX(),
                b.maxY() + extra / 4,
                left + names,
                left + tape,
                width - left - names - room,
                height - left - tape - hint,
                margin);
    }

    /** Room that the words under a picture need. */
    private static double foot(Picture picture, double height) {
        if (picture == Picture.SECTION) {
            return height < HINT_FROM_PX ? LOW_SECTION_TAPE_PX : SECTION_TAPE_PX;
        }
        return picture.walls() && height >= HINT_FROM_PX ? HINT_PX : 0;
    }

    /** Width of the longest name beside the walls. */
    private static double names(Plot plot) {
        return plot.kiln().grooves().stream()
                .filter(GrooveSolid.OnWall.class::isInstance)
                .mapToDouble(g -> NAME_PX + TextSizes.width(g.name(), Fonts.sans(TextStyle.LABEL.px())))
                .max()
                .orElse(0);
    }
}
