package portwright.app.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import portwright.app.part.FindingSlip;
import portwright.check.Finding;

/** The slips of the findings: each stays the same slip while only its numbers change. */
final class SlipDeck {
    private final Consumer<Finding> choose;
    private List<FindingSlip> views = List.of();
    /** Slips that have nothing to show while a part is dragged: what was there is likely to come back, and a new slip is dear. */
    private List<FindingSlip> spare = List.of();

    SlipDeck(Consumer<Finding> choose) {
        this.choose = choose;
    }

    /** A slip for each finding, the one that showed it before or a new one. */
    List<FindingSlip> of(List<Finding> findings, boolean inch, boolean dragging) {
        List<FindingSlip> old = new ArrayList<>(views);
        old.addAll(spare);
        views = findings.stream().map(f -> slip(f, old, inch)).toList();
        spare = dragging ? old : List.of();
        return views;
    }

    private FindingSlip slip(Finding f, List<FindingSlip> old, boolean inch) {
        FindingSlip slip =
                old.stream().filter(o -> o.fits(f)).findFirst().orElseGet(() -> new FindingSlip(f, inch, choose));
        old.remove(slip);
        slip.show(f, inch);
        return slip;
    }
}
