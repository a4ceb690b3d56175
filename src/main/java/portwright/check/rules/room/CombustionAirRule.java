package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.data.SafetyNumber;
import portwright.review.Review;
import portwright.review.RoomReview;
import portwright.source.Source;

/** Room volume or openings give the burners air to burn with; a floor, not proof that the air can be breathed. */
public final class CombustionAirRule implements Rule {

    private static final Source SOURCE =
            Source.published("NFPA 54", "", "9.3.2 as reprinted in a state mechanical code; IRC M1703");

    @Override
    public String id() {
        return "combustion-air";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (Boolean.FALSE.equals(review.room().indoors())) {
            return;
        }
        if (!review.room().openings().known()) {
            out.lacks(this, review.room().openings().lacking());
            out.add(Say.caution(
                    this,
                    null,
                    null,
                    "Whether the burners get air to burn with is not known.",
                    "Add " + String.join(", ", review.room().openings().needs()) + ".",
                    SOURCE));
            return;
        }
        Unstated.freeAreas(this, review, out);
        RoomReview.AirOpenings o = review.room().openings().value();
        if (!o.open().isEmpty()) {
            out.lacks(this, o.open().toArray(String[]::new));
        }
        if (o.method() == null) {
            double volume = review.room().air().value().volumeM3();
            String need = o.volumeNeededM3() == null
                    ? "The room is so tight that no volume gives the burners air"
                    : "The burners' " + Say.told(o.grossW() / 1000, "kW") + " gross need " + Say.n(o.volumeNeededM3())
                            + " m³ of room" + (o.byInfiltration() ? " as tight as it is stated" : "")
                            + "; there are " + Say.n(volume) + " m³";
            out.add(Say.caution(
                    this,
                    new Measure(volume, "m3"),
                    o.volumeNeededM3() == null ? null : new Measure(o.volumeNeededM3(), "m3"),
                    need + " and too little opening"
                            + (o.open().isEmpty()
                                    ? "."
                                    : " that is known to lie near ceiling and floor: add " + String.join(", ", o.open())
                                            + ".")
                            + (o.narrow() > 0
                                    ? " Less than " + Say.told(SafetyNumber.value("opening-least") * 1000, "mm")
                                            + " wide or high, an opening does not count: " + o.narrow()
                                            + (o.narrow() == 1 ? " is." : " are.")
                                    : ""),
                    "Open two clear areas of " + Say.told(o.twoDirectM2() * 1e4, "cm²")
                            + " each to outdoors (" + Say.told(o.twoHorizontalM2() * 1e4, "cm²")
                            + " through horizontal ducts), one beginning within 305 mm of the ceiling and one within 305 mm of the floor, or one of "
                            + Say.told(o.oneM2() * 1e4, "cm²") + " near the ceiling, or two of "
                            + Say.told(o.twoRoomM2() * 1e4, "cm²")
                            + " to a large room"
                            + (o.shortM2() > 0
                                    ? " (" + Say.told(o.shortM2() * 1e4, "cm²") + " more in each than now)."
                                    : "."),
                    SOURCE));
        }
    }
}
