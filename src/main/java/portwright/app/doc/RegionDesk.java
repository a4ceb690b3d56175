package portwright.app.doc;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executor;
import portwright.check.NotChecked;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.geometry.FeasibleRegion;
import portwright.geometry.FeasibleRegion.Piece;
import portwright.layout.CentreRegion;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.Drilling;
import portwright.model.Kiln;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;
import portwright.model.Shelf;
import portwright.model.UserLimit;
import portwright.review.Review;

/**
 * Where the centre of the chosen floor or lid hole may go. Worked out off the window's thread and kept: it does not depend on where the hole itself
 * lies, so that nothing is computed while that hole is dragged, and what all holes of one size share is computed once.
 */
public final class RegionDesk {
    private static final int KEPT = 6;

    /** Rules of a hole's place that lack input where parts of the kiln are not known; those of inlets in the floor. */
    private static final Set<String> OF_PLACES = Set.of(
            "element-clearance", "fitting-clearance", "groove-room", "joint-sliver", "one-brick", "weakest-section");

    private static final Set<String> OF_FLAMES =
            Set.of("burner-room", "flame-on-element", "flame-on-fitting", "post-in-flame", "shelf-over-inlet");

    private final Document doc;
    private final Executor work;
    private final Executor ui;
    private final Runnable listener;
    private final Map<Base, CentreRegion> bases = new LinkedHashMap<>();
    private Key wanted;
    private Region region;

    /** What every hole of one size on one slab shares. */
    private record Base(
            Kiln kiln,
            List<Shelf> shelves,
            Drilling drilling,
            List<Burner> burners,
            Map<String, Map<String, UserLimit>> limits,
            On on,
            Role role,
            double diameterMm) {}

    private record Key(Base base, String hole, List<Port> others) {}

    /**
     * The places of one hole's centre.
     *
     * @param pieces largest first, in the part's frame, mm; empty where no place is clear
     * @param areaMm2 of all pieces
     * @param clearMm2 of the places that bring no caution either
     * @param unknown rules of such a hole's place that were not checked: what they forbid is not left out
     */
    public record Region(
            String hole, On on, List<Piece> pieces, double areaMm2, double clearMm2, List<NotChecked> unknown) {
        public Region {
            pieces = List.copyOf(pieces);
            unknown = List.copyOf(unknown);
        }
    }

    /**
     * @param work runs a task away from the window, one after the other
     * @param ui runs a task on the thread of the window
     * @param listener hears, on that thread, that the region changed
     */
    public RegionDesk(Document doc, Executor work, Executor ui, Runnable listener) {
        this.doc = doc;
        this.work = work;
        this.ui = ui;
        this.listener = listener;
    }

    /** Hears that design or selection changed; answers whether a new region is being worked out. */
    public boolean changed() {
        Key key = key(doc.design(), doc.selected());
        if (key == null) {
            wanted = null;
            region = null;
            return false;
        }
        if (key.equals(wanted)) {
            return false;
        }
        if (region != null && !region.hole().equals(key.hole())) {
            region = null;
        }
        wanted = key;
        Design design = doc.design();
        work.execute(() -> {
            Region r = find(design, key);
            ui.execute(() -> {
                if (key == wanted) {
                    region = r;
                    listener.run();
                }
            });
        });
        return true;
    }

    private static Key key(Design d, String selected) {
        for (Port p : d.ports()) {
            if (p.name().equals(selected) && p.on() != On.WALL) {
                return new Key(
                        new Base(
                                d.kiln(),
                                d.shelves(),
                                d.drilling(),
                                d.burners(),
                                d.limits(),
                                p.on(),
                                p.role(),
                                p.diameter().mm()),
                        p.name(),
                        d.ports().stream()
                                .filter(o -> o.on() == p.on() && !o.name().equals(selected))
                                .toList());
            }
        }
        return null;
    }

    private Region find(Design design, Key key) {
        Base b = key.base();
        CentreRegion centre = bases.get(b);
        if (centre == null) {
            centre = CentreRegion.of(design, b.on(), b.role(), b.diameterMm());
            bases.put(b, centre);
            if (bases.size() > KEPT) {
                bases.remove(bases.keySet().iterator().next());
            }
        }
        FeasibleRegion f = centre.around(key.others(), key.hole());
        return new Region(
                key.hole(),
                b.on(),
                f.pieces(),
                f.area(),
                centre.clearAreaMm2(key.others(), key.hole()),
                unknown(design, b));
    }

    /** What the region knows nothing of. Asked of the design itself: the window's own check may be behind it. */
    private static List<NotChecked> unknown(Design design, Base b) {
        String other = "kiln." + (b.on() == On.FLOOR ? On.LID : On.FLOOR).id() + ".";
        boolean flame = b.role() == Role.INLET && b.on() == On.FLOOR;
        return new RuleBook(LimitTable.load())
                .check(Review.geometryOnly(design), Set.of(RuleBook.Section.GEOMETRY)).notChecked().stream()
                        .filter(n -> OF_PLACES.contains(n.rule()) || flame && OF_FLAMES.contains(n.rule()))
                        .filter(n -> n.needs().stream().anyMatch(f -> !f.startsWith(other)))
                        .toList();
    }

    /** The region of the chosen hole; null while it is worked out, and without a floor or lid hole chosen. */
    public Region region() {
        return region;
    }
}
