package portwright.sheet;

import java.util.List;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.drawing.HoleNote;
import portwright.drawing.PartLook;
import portwright.geometry.KilnGeometry;

/** What every page of one print knows. */
record Job(
        CheckResult result,
        KilnGeometry kiln,
        String fileName,
        SheetOptions options,
        ContentMark mark,
        PartLook look,
        List<View> views) {
    long stops() {
        return result.stops(Forbids.DRILLING);
    }

    List<HoleNote> holes() {
        return HoleNote.of(kiln);
    }

    Paper paper() {
        return options.paper();
    }
}
