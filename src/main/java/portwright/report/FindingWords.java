package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import portwright.calc.firing.HardestCone;
import portwright.calc.firing.log.LogFinding;
import portwright.units.Celsius;
import portwright.units.Format;

/** What a record shows, in words: what, when, and where to look. */
final class FindingWords {
    /** A dead reading over this is the top of a scale: 1330 °C. */
    private static final double UPSCALE_K = Celsius.ZERO_C + 1330;

    private static final String CIRCUIT =
            "Kiln unplugged and cold: measure each element's resistance, look at fuses, breakers and each relay's contacts. The voltage under load is for a licensed electrician.";

    private FindingWords() {}

    static String of(LogFinding f, boolean elements) {
        String at = Double.isNaN(f.kelvin())
                ? ""
                : "at " + Format.plain(f.timeS() / 3600, 2) + " h, " + Format.plain(f.kelvin() - ZERO_C, 0) + " °C: ";
        String lost = Double.isNaN(f.lostW()) ? "" : Format.plain(f.lostW() / 1000, 1) + " kW";
        String gone = Double.isNaN(f.lostShare())
                ? lost
                : Format.plain(f.lostShare() * 100, 0) + " % of the element power (" + lost + " of "
                        + Format.plain(f.lostW() / f.lostShare() / 1000, 1) + " kW)";
        String falls = f.falls() ? " The temperature falls." : "";
        return switch (f.kind()) {
            case SCALE ->
                "the temperature scale of this log is in doubt (see above): nothing else is read from it. Name the column temp °C or temp °F, whichever it holds, and read it again.";
            case DEAD_PROBE -> dead(f);
            case FROZEN ->
                at
                        + "the reading stands at the very same figure for an hour and more, straight out of a climb, where the plan holds nothing: thermocouple, instrument or logger was frozen, unless the kiln was held there by hand. No other finding rests on that time. Trust cones; mend it before the next firing, for a controller on it heats on without end.";
            case RELAY ->
                at + "nearly all element power is gone: " + gone + " missing." + falls
                        + " Look at relay, switch, breaker and controller, unless the kiln was switched off.";
            case STUCK ->
                at
                        + "the elements give power that the plan does not ask for: a relay or contactor stuck shut, unless the firing was changed by hand. Switch off at the disconnect, not at the controller, and renew it before the next firing."
                        + (f.orProbe()
                                ? " Or the thermocouple of this log reads low, or is not the controller's: then steps began earlier than the log shows. Cones in the log tell which."
                                : "");
            case MORE_POWER ->
                at + "the elements give " + Format.plain((1 - f.lostShare()) * 100, 0)
                        + " % of what the plan's share asks, more than load, loss and gas make of it in a sound kiln: a relay or contactor stuck shut, or the share set higher than planned."
                        + " More gas than the design says, less ware, or a damper farther shut does this as well. Switch off at the disconnect after the firing and look at relays and contactors with the kiln cold, before the next one."
                        + (f.orProbe() ? " Or the thermocouple reads high: put cones beside it." : "");
            case OVER ->
                runsOn(f, at)
                        + (!elements
                                ? " More gas than planned, or longer: shut the gas down, and leave the damper until it is."
                                : f.gas()
                                        ? " More gas than planned, or a relay stuck on: shut the gas down, switch off at the isolator, leave the damper until both are off, and look at both."
                                        : " A relay or contactor stuck on, or gas still burning, unless the firing was carried on by hand: switch off at the isolator, not at the controller.")
                        + " Look at ware and shelves before the next firing.";
            case OVER_WITH_LESS_WARE ->
                runsOn(f, at)
                        + " The log notes less ware than planned, and at fixed heat a kiln with less in it runs hotter: write that load into the design for such a firing, or set less. It tells nothing of gas and relays, which look the same.";
            case ELEMENT ->
                f.behind()
                        ? at + "the climb falls off and the power stays, as with all elements on, yet " + gone
                                + " is missing. An element, its relay or fuse, or one leg of the supply is out, unless a share of the elements was set by hand or ports stood open."
                                + " When it went this record does not say. " + CIRCUIT + probe(f)
                        : f.fromStart()
                                ? gone
                                        + " is missing wherever the steps ask for a known power; seen from "
                                        + seen(f)
                                        + " on: an element, its relay or fuse, or one leg of the supply is out, or the supply is far too low"
                                        + byAir(f) + "."
                                        + " It was so by then; whether since before this firing the record does not say."
                                        + falls + " " + CIRCUIT + probe(f)
                                : !Double.isNaN(f.soundS())
                                        ? gone + " is missing where the steps ask for a known power, " + between(f)
                                                + falls
                                                + " An element, its relay or fuse, or one leg of the supply is out"
                                                + byAir(f) + ". " + CIRCUIT + probe(f)
                                        : f.orAir()
                                                ? at + gone + " is lost from here on, or as much heat goes with air."
                                                        + falls
                                                        + " Either an element or the relay of its group is out, or the damper stood farther open than the log says: with gas on both look the same in the climb."
                                                        + " What tells them apart: kiln unplugged and cold, measure each element's resistance; are they sound, it was the damper. Look where the plate stands against the travel that was written down."
                                                        + probe(f)
                                                : at + gone + " is lost from here on." + falls
                                                        + " Look for a broken element, or the relay of its group; measure each element's resistance cold and unplugged."
                                                        + probe(f);
            case TOO_MUCH_AIR ->
                at + "too much air" + (f.lostW() > 0 ? ", " + lost + " of heat lost" : "") + "." + falls
                        + " Close the damper toward the plan's setting and watch the flame at the spyhole and the CO meter. Never while the reading runs over the plan: then the gas goes down first.";
            case ELEMENT_OR_AIR ->
                (Double.isNaN(f.soundS()) ? at : "")
                        + lost
                        + (f.fromStart()
                                ? " of heat is missing wherever the steps ask for a known power with gas."
                                : !Double.isNaN(f.soundS())
                                        ? " of heat is missing with gas burning, " + between(f)
                                        : " of heat is lost from here on, with gas burning.")
                        + falls
                        + " Either the damper stands too far open or an element is broken; a damper column in the log tells them apart."
                        + probe(f);
            case AIR_OR_ELEMENT ->
                (Double.isNaN(f.soundS()) ? at : "")
                        + lost
                        + (Double.isNaN(f.soundS())
                                ? " of heat is missing from about where the ports are opened on."
                                : " of heat is missing where the steps ask for a known power, " + between(f))
                        + falls
                        + " Air through the holes (more leak or draft than the design says) or an element: in the climb both look the same."
                        + " With the kiln cold look for cracks, gaps at lid or door, and how the plate shuts; unplugged, measure each element's resistance. Are they sound, it is air: then --fit learns the leak from a record like this one."
                        + probe(f);
            case WEAK ->
                (f.behind() ? at + "the climb falls off and the power stays: " : "")
                        + "the kiln may give " + gone
                        + " less than forecast"
                        + (f.behind() ? " with all elements on" : ", from the start of full power")
                        + ". Load, heat loss and voltage can explain that, or aged elements, or a dead one, or with gas a damper farther open than planned; measure the elements' resistance cold and unplugged. A fit to this record learns it."
                        + probe(f);
            case CONE ->
                at + "cone " + f.cone()
                        + " is noted down, which cannot have bent at such a reading: it would take a thermocouple that reads "
                        + Format.plain(f.offsetK(), 0) + " °C (" + Format.plain(f.offsetK() * 1.8, 0)
                        + " °F) low or more, farther than one in use drifts. Either the entry is wrong (cone, row or hour), or the thermocouple has failed or sits in the wrong place."
                        + " It counts for nothing here. Look at the cone pack; put cones beside the thermocouple in the next firing.";
            case THERMOCOUPLE ->
                "seen from the first cone that tells, " + at + "the most that any cone shows is that the "
                        + RecordText.offset(f.offsetK())
                        + ". When it began no log without cones before can say. Trust the cones; replace the thermocouple or correct the reading.";
        };
    }

    /** The damper as a cause that looks the same with gas on. */
    private static String byAir(LogFinding f) {
        return f.orAir()
                ? ", or the damper stood farther open than the log says: with gas on both look the same in the climb"
                : "";
    }

    /** From when to when a loss can have begun. */
    private static String between(LogFinding f) {
        return "seen from " + seen(f) + " on; "
                + (f.soundS() > 0
                        ? "to " + Format.plain(f.soundS() / 3600, 2)
                                + " h the record shows no such loss, so it began in between."
                        : "when it began this record does not say: what a controller gave before is not known.");
    }

    private static String seen(LogFinding f) {
        return Format.plain(f.timeS() / 3600, 2) + " h, " + Format.plain(f.kelvin() - ZERO_C, 0) + " °C";
    }

    /** How far a reading goes over the plan's, and what cone it lays down. */
    private static String runsOn(LogFinding f, String at) {
        String cones = f.cone() == null || f.cone().isEmpty()
                ? ""
                : !HardestCone.harder(f.cone(), f.planCone())
                        ? " By the readings no cone goes down that is harder than the plan's last, cone " + f.planCone()
                                + "."
                        : " By the readings cone " + f.cone() + " goes down"
                                + (f.planCone().isEmpty()
                                        ? "."
                                        : ", where the plan's firing ends with cone " + f.planCone() + ".");
        return at + "the reading runs on over what the plan reaches, by " + Format.plain(f.offsetK(), 0) + " °C ("
                + Format.plain(f.offsetK() * 1.8, 0) + " °F) at most." + cones;
    }

    /** A cause that looks the same where no cone proves the reading. */
    private static String probe(LogFinding f) {
        return f.orProbe()
                ? " A thermocouple that reads low, or lower and lower, looks just the same: put cones beside it in the next firing before an element is bought."
                : "";
    }

    private static String dead(LogFinding f) {
        if (f.kelvin() >= UPSCALE_K) {
            return "from " + Format.plain(f.timeS() / 3600, 2) + " h on the thermocouple tells nothing: it stands near "
                    + Format.plain(f.kelvin() - ZERO_C, 0)
                    + " °C, where an instrument goes that sees no thermocouple, and where no brick kiln stays. It is burnt out, or its wire or"
                    + " contact is open; if cones and glow say otherwise, the kiln has run away. These rows are left out and no goal is counted as reached by them. A controller on it gives no power, one"
                    + " set to read low heats on without end. Switch off, renew it, and trust cones meanwhile.";
        }
        return "from " + Format.plain(f.timeS() / 3600, 2) + " h on the thermocouple tells nothing: "
                + (Double.isNaN(f.kelvin())
                        ? "blank, open or out of range"
                        : "it shows " + Format.plain(f.kelvin() - ZERO_C, 0) + " °C, to which no kiln can jump")
                + ". A broken wire, a loose or shorted contact, or the end of the instrument's range. These rows are left out. A controller on it"
                + " heats on without end where it reads low. Switch off, mend it, and trust cones meanwhile.";
    }
}
