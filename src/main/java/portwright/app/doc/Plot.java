package portwright.app.doc;

import java.util.List;
import portwright.check.Finding;
import portwright.drawing.Box;
import portwright.drawing.Labels;
import portwright.drawing.PartLook;
import portwright.drawing.PartPainter;
import portwright.drawing.Pen;
import portwright.drawing.SectionPainter;
import portwright.drawing.UnrolledWalls;
import portwright.geometry.Face;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.model.On;

/** One picture of the kiln: its painter, its bounds, and the way between picture and part frames. */
public final class Plot {
    private final KilnGeometry kiln;
    private final Picture picture;
    private final PartPainter part;
    private final UnrolledWalls walls;
    private final SectionPainter section;
    private final boolean plan;

    public Plot(KilnGeometry kiln, Picture picture, List<Finding> findings, PartLook look) {
        this.kiln = kiln;
        this.picture = picture;
        plan = look.plan();
        part = picture.slab() ? new PartPainter(kiln, picture.face(), findings, look) : null;
        walls = picture.walls() ? new UnrolledWalls(kiln, picture.face().hot(), findings, look) : null;
        section = picture == Picture.SECTION ? new SectionPainter(kiln) : null;
    }

    public Picture picture() {
        return picture;
    }

    /** What the picture needs, mm. */
    public Box bounds() {
        return part != null ? part.bounds() : walls != null ? walls.bounds() : section.bounds();
    }

    /** Paints what lies in the window. */
    public void paint(Pen pen, Box window) {
        under(pen, window, null, List.of());
        over(pen, window, null, List.of());
        if (section != null && !plan) {
            section.names(pen, new Labels(pen, window));
        }
    }

    /** Whether a moving hole leaves the rest as it is: in all pictures but the section, whose cuts follow the holes. */
    public boolean layered() {
        return section == null;
    }

    /** Paints all that stays as it is while one hole moves, null for none; of the section everything but its words. The words of a slab keep off the boxes given, mm. */
    public void under(Pen pen, Box window, String moving, List<Box> keepFree) {
        if (part != null) {
            part.under(pen, window, moving, keepFree);
        } else if (walls != null) {
            walls.under(pen, window, moving);
        } else {
            section.shapes(pen, window);
        }
    }

    /** Paints the words on a slab once more, over what was painted since; walls and section carry nothing that hides theirs. */
    public void words(Pen pen, Box window, String moving, List<Box> keepFree) {
        if (part != null) {
            part.words(pen, window, moving, keepFree);
        }
    }

    /** Words of the fire keep off what the section shows. */
    public void sectionKeepFree(Labels labels) {
        section.keepFree(labels);
    }

    /** Names what the section shows, off all that the labels know of. */
    public void sectionNames(Pen pen, Labels labels) {
        section.names(pen, labels);
    }

    /** Paints what {@link #under} leaves out. */
    public void over(Pen pen, Box window, String moving, List<Box> keepFree) {
        if (part != null) {
            part.over(pen, window, moving, keepFree);
        } else if (walls != null) {
            walls.over(pen, window, moving);
        }
    }

    /** Whether the face lies in this picture. */
    public boolean shows(Face face) {
        return picture.face() != null && picture.face().on() == face.on();
    }

    /** From a part's frame to the picture. */
    public Pt toPicture(Face face, Pt p) {
        Pt v = picture.mirrored() ? p.mirrored() : p;
        return walls == null ? v : v.plus(walls.middle(face.panel()), 0);
    }

    /** The face under a picture point: the panel there for unrolled walls, beyond them the nearest. */
    public Face faceAt(Pt p) {
        if (walls == null) {
            return picture.face() == null ? null : new Face(picture.face().on(), 0, true);
        }
        Panel best = null;
        for (Panel panel : kiln.panels()) {
            if (best == null || beyond(panel, p.x()) < beyond(best, p.x())) {
                best = panel;
            }
        }
        return new Face(On.WALL, best.number(), true);
    }

    /** How far a place lies beyond the edges of a panel, below 0 within it. */
    private double beyond(Panel panel, double x) {
        return Math.abs(x - walls.middle(panel.number())) - panel.width() / 2;
    }

    /** From the picture to a part's frame. */
    public Pt toPart(Face face, Pt p) {
        Pt v = walls == null ? p : p.plus(-walls.middle(face.panel()), 0);
        return picture.mirrored() ? v.mirrored() : v;
    }

    public KilnGeometry kiln() {
        return kiln;
    }
}
