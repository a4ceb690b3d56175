package portwright.review;

import java.util.List;
import portwright.calc.room.RoomCo;
import portwright.data.ExposureLimit;
import portwright.data.LimitFamily;
import portwright.data.SafetyNumber;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.RoomPlace;

/**
 * Room figures of a design.
 *
 * @param place where the kiln stands; null when not given
 * @param family whose exposure limits count
 * @param swell how far a mole of gas swells in the thin air of the altitude, see {@link ThinAir#swell}
 * @param air fresh air of the room
 * @param hood what the hood draws and needs; lacking where there is none
 * @param co carbon monoxide in the room over the firing
 * @param oxygenShare lowest oxygen in the room, volume fraction
 * @param slowOxygenShare the same where gas burns as long as the slow end of the forecast's band has it
 * @param heat heat given to the room at most and its rise
 * @param openings combustion-air openings against the fuel-gas code
 * @param headroom what hangs above the flues, whatever burns
 * @param ceiling plume above the flues
 * @param unlit gas that does not burn in the chamber
 * @param purge five changes of the chamber's air by the kiln's own draught
 */
public record RoomReview(
        RoomPlace place,
        LimitFamily family,
        double swell,
        Known<Air> air,
        Known<HoodFigures> hood,
        Known<Co> co,
        Known<Double> oxygenShare,
        Known<Double> slowOxygenShare,
        Known<Heat> heat,
        Known<AirOpenings> openings,
        Known<Headroom> headroom,
        Known<CeilingFigures> ceiling,
        Known<Unlit> unlit,
        Known<Purge> purge) {

    /**
     * Fresh air, m³/s.
     *
     * @param volumeM3 room
     * @param freeAreaM2 clear area of openings to outdoors
     * @param openings how many lead outdoors
     * @param stackM3PerS by warmth
     * @param windM3PerS by the stated wind
     * @param fanM3PerS by ventilator and hood, as their plates say
     * @param makeUpM3PerS what the openings let in to follow a fan, at the usual speed of make-up air
     * @param leakM3PerS through the cracks of a closed room
     */
    public record Air(
            double volumeM3,
            double freeAreaM2,
            int openings,
            double stackM3PerS,
            double windM3PerS,
            double fanM3PerS,
            double makeUpM3PerS,
            double leakM3PerS) {
        /** What ventilator and hood are counted to move: no more than comes in after it. */
        public double countedFanM3PerS() {
            return Math.min(fanM3PerS, makeUpM3PerS);
        }

        /** Without any wind: the greatest of stack, fan and cracks. */
        public double calmM3PerS() {
            return Math.max(leakM3PerS, Math.max(stackM3PerS, countedFanM3PerS()));
        }

        /** With the stated wind. */
        public double statedM3PerS() {
            return Math.max(calmM3PerS(), windM3PerS);
        }
    }

    /**
     * The hood.
     *
     * @param plateM3PerS it draws by its plate
     * @param flowM3PerS it is counted to draw: indoors no more than its part of what the openings let in
     * @param neededM3PerS to catch the flue gas at its height
     * @param neededDiameterM to cover the lid
     * @param diameterM it has
     * @param reach how far flow and width are enough, 0 to 1
     */
    public record HoodFigures(
            double plateM3PerS,
            double flowM3PerS,
            double neededM3PerS,
            double neededDiameterM,
            double diameterM,
            double reach) {
        /** Share of the flue gas it is counted to catch, at most 0.9. */
        public double capturedShare() {
            return SafetyNumber.value("hood-capture") * reach;
        }
    }

    /**
     * Carbon monoxide.
     *
     * @param worstStep step that makes the most
     * @param worstLambda lambda counted there
     * @param madeM3PerS CO made there, as room air of 20 °C
     * @param firing what every step makes, mol/s counted as at sea level; the minutes in which the kiln stands open count to the step beside
     * @param gasOnS when gas is first lit, s from the start of the first of these
     * @param shareInRoom part of it that enters the room
     * @param ledShare part led outdoors
     * @param burntShare part of the rest burnt at the flue
     * @param calm course with no wind
     * @param stated course with the stated wind
     * @param ceiling limit at any time
     * @param eightHours limit over 8 h
     * @param quarterHour limit over 15 min; null where the family has none
     * @param flowForCeilingM3PerS fresh air that keeps the steady level under the ceiling
     * @param flowForEightHoursM3PerS fresh air that keeps the steady level under the 8 h limit
     * @param airOutS time after the last gas until the level with no wind is down to the 8 h limit; 0 where it never passes it
     */
    public record Co(
            int worstStep,
            double worstLambda,
            double madeM3PerS,
            List<RoomCo.Segment> firing,
            double gasOnS,
            double shareInRoom,
            double ledShare,
            double burntShare,
            RoomCo calm,
            RoomCo stated,
            ExposureLimit ceiling,
            ExposureLimit eightHours,
            ExposureLimit quarterHour,
            double flowForCeilingM3PerS,
            double flowForEightHoursM3PerS,
            double airOutS) {}

    /**
     * Warmth.
     *
     * @param heatW given to the room at most
     * @param riseK steady rise with no wind; infinite without air
     */
    public record Heat(double heatW, double riseK) {}

    /**
     * Openings against the fuel-gas code.
     *
     * @param grossW heat of all burners
     * @param volumeNeededM3 room volume by the standard method, or by known infiltration where that counts; null where no volume is enough
     * @param byInfiltration whether a known tightness rules out the standard method
     * @param twoDirectM2 each of two openings to outdoors
     * @param twoHorizontalM2 each of two ducted openings
     * @param oneM2 a single opening to outdoors
     * @param twoRoomM2 each of two openings to another room
     * @param method the method that the design meets; null for none that is proven
     * @param shortM2 area still lacking in each of two direct openings, 0 if a method is met
     * @param narrow openings less wide or high than the code lets count
     * @param open fields without which a method cannot be proven
     */
    public record AirOpenings(
            double grossW,
            Double volumeNeededM3,
            boolean byInfiltration,
            double twoDirectM2,
            double twoHorizontalM2,
            double oneM2,
            double twoRoomM2,
            String method,
            double shortM2,
            int narrow,
            List<String> open) {}

    /**
     * Room above the flues.
     *
     * @param carriedOff whether hood and pipe take at least the share that a well sized hood is counted to catch
     * @param heightM flues to ceiling
     */
    public record Headroom(boolean carriedOff, double heightM) {}

    /**
     * The plume under the ceiling.
     *
     * @param heatW counted in the plume: of gas and elements, less what a hood or pipe carries off
     * @param ceilingK plume temperature there
     * @param roomK room air
     * @param heightNeededM height at which it stays at the limit of 71 °C
     */
    public record CeilingFigures(double heatW, double ceilingK, double roomK, double heightNeededM) {}

    /**
     * Unlit gas in the cold chamber.
     *
     * @param lowerLimit volume fraction
     * @param limitKg gas that brings the chamber to its lower limit
     * @param seconds until then with all burners open
     */
    public record Unlit(double lowerLimit, double limitKg, double seconds) {}

    /**
     * Purge by the kiln's own draught, gas shut, damper off, ports open.
     *
     * @param chamberK chamber counted with: the lowest at which gas may be lit again
     * @param flowM3PerS air drawn
     * @param seconds for five changes
     */
    public record Purge(double chamberK, double flowM3PerS, double seconds) {}

    /** Runs the room; {@code fire} and {@code firing} may be null, then the levels asked for count alone. */
    public static RoomReview of(
            Design design,
            KilnGeometry geometry,
            SupplyReview supply,
            FireReview fire,
            FiringReview firing,
            Assumptions assume) {
        return new RoomFigures(design, geometry, supply, fire, firing, assume).all();
    }

    /** Whether the kiln stands in a closed room; null when not known. */
    public Boolean indoors() {
        return place == null ? null : indoors(place);
    }

    static boolean indoors(RoomPlace place) {
        return place != RoomPlace.OUTDOORS && place != RoomPlace.OPEN_SHED;
    }

    /** CO in the room for a chart: time from the first lighting and level with no wind; empty where not computed. */
    public List<RoomCo.Sample> chartCalm() {
        return co.known() ? fromGas(co.value().calm()) : List.of();
    }

    /** CO in the room for a chart: time from the first lighting and level with the stated wind; empty where not computed. */
    public List<RoomCo.Sample> chartStated() {
        return co.known() ? fromGas(co.value().stated()) : List.of();
    }

    private List<RoomCo.Sample> fromGas(RoomCo course) {
        double on = co.value().gasOnS();
        return course.series().stream()
                .filter(s -> s.timeS() >= on - 1e-6)
                .map(s -> new RoomCo.Sample(s.timeS() - on, s.ppm()))
                .toList();
    }
}
