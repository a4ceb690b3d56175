package portwright.sheet;

import java.util.List;

/**
 * What stands on the firing card, ready to print.
 *
 * @param title of the design
 * @param fire fuel, burners, jet and pressure in one line
 * @param mark content mark in words
 * @param shutHeading heading over the steps of shutting down
 * @param runsOver what to do where the kiln runs on past a goal
 * @param plate the damper at full size; null when it is not known
 * @param forecast one line; empty when there is none
 * @param cautions short cautions of the common list that matter at this kiln and are not in the lists above, stops first
 * @param own the design's own cautions that bear on lighting, each with what to do; empty when there is none
 * @param scale in which the record is kept: the one that the steps are written in
 * @param stops findings that forbid lighting
 * @param unproven rules against lighting that were not checked
 * @param piped whether all gas comes by pipe, so that nothing is said of a cylinder
 */
public record CardData(
        String title,
        String fire,
        String mark,
        List<Step> steps,
        Plate plate,
        List<String> lighting,
        String shutHeading,
        List<String> shuttingDown,
        List<String> temperatureFalls,
        List<String> runsOver,
        List<String> flameOut,
        List<String> alarm,
        List<CardData.Caution> cautions,
        List<Own> own,
        String forecast,
        String scale,
        long stops,
        List<String> unproven,
        boolean piped) {

    /**
     * One step of the firing, or what is done between two steps.
     *
     * @param to target as typed, or the cone, or the hold
     * @param beside temperature in the other scale or in both, and the cone that falls thereabouts
     * @param pressure gauge pressure of the gas; "shut" without gas
     * @param plate travel of the damper plate from start to end, mm; "off", or "plugged" while the ports are
     * @param flame what to look for
     * @param gas whether gas burns
     * @param across words over the whole row, all else being empty; empty for a step
     * @param remark whether those words tell what to expect, not what to do
     */
    public record Step(
            String to,
            String beside,
            String rate,
            String heat,
            String pressure,
            String atmosphere,
            String plate,
            String flame,
            boolean gas,
            String across,
            boolean remark) {
        static Step across(String words) {
            return new Step("", "", "", "", "", "", "", "", false, words, false);
        }

        static Step remark(String words) {
            return new Step("", "", "", "", "", "", "", "", false, words, true);
        }
    }

    /**
     * The damper plate over a flue.
     *
     * @param flue the flue, or the flues and how their plates move
     * @param holeMm diameter of the flue
     * @param inch whether the travel is told in inches beside mm
     */
    public record Plate(String flue, double holeMm, boolean inch, List<Band> bands) {}

    /**
     * A caution of this design.
     *
     * @param name the rule's name in words
     * @param cure what to do
     */
    public record Own(String name, String cure) {
        String words() {
            return name + ": " + cure;
        }
    }

    /** A caution in a few words; {@code stop}: never do it. */
    public record Caution(String words, boolean stop) {}

    /** Open travel for one atmosphere, mm from the edge of the hole that opens first: where to set it, and between which it may stand. */
    public record Band(String level, double setMm, double lowMm, double highMm) {}
}
