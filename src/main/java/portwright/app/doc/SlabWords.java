package portwright.app.doc;

import portwright.geometry.Segment;
import portwright.model.On;
import portwright.model.UnitSystem;

/** How large the floor or the lid is over all, as the wall's thickness and the overhang make it. */
public final class SlabWords {
    private SlabWords() {}

    /** Left to right and front to back. */
    public static String of(Document doc, On on) {
        Segment box = doc.shapes().geometry().slab(on).bounds();
        UnitSystem units = Moves.units(doc.text());
        return "That makes the " + on.id() + " "
                + Lengths.shown(box.b().x() - box.a().x(), units) + " wide and "
                + Lengths.shown(box.b().y() - box.a().y(), units) + " deep over all.";
    }
}
