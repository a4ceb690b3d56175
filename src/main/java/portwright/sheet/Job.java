package portwright.sheet;

import java.util.List;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.drawing.PartLook;
import portwright.geometry.KilnGeometry;
import portwright.layout.DrillOutlook;
import portwright.model.On;

/** What every page of one print knows. */
record Job(
        CheckResult result,
        KilnGeometry kiln,
        String fileName,
        SheetOptions options,
        ContentMark mark,
        PartLook look,
        List<View> views,
        DrillOutlook drill) {
    long stops() {
        return result.stops(Forbids.DRILLING);
    }

    /** Whether a wall is printed from outside alone. */
    boolean outsideOnly(int panel) {
        List<View> wall = views.stream()
                .filter(v -> v.face().on() == On.WALL && v.face().panel() == panel)
                .toList();
        return !wall.isEmpty() && wall.stream().noneMatch(v -> v.face().hot());
    }

    Paper paper() {
        return options.paper();
    }
}
