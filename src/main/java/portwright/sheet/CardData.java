package portwright.sheet;

import java.util.List;

/**
 * What stands on the firing card, ready to print.
 *
 * @param title of the design
 * @param fire fuel, burners, jet and pressure in one line
 * @param mark content mark in words
 * @param plate the damper at full size; null when it is not known
 * @param forecast one line; empty when there is none
 * @param cautions short cautions of the common list that matter at this kiln and are not in the lists above, stops first
 * @param scale in which the record is kept: the one that the steps are written in
 * @param stops findings that forbid lighting
 * @param unproven rules against lighting that were not checked
 */
public record CardData(
        String title,
        String fire,
        String mark,
        List<Step> steps,
        Plate plate,
        List<String> lighting,
        List<String> shuttingDown,
        List<String> temperatureFalls,
        List<String> flameOut,
        List<String> alarm,
        List<CardData.Caution> cautions,
        String forecast,
        String scale,
        long stops,
        List<String> unproven) {

    /**
     * One step of the firing.
     *
     * @param to target in the first scale, or the cone
     * @param other the same in the other scale
     * @param plate travel of the damper plate from start to end, mm; "off", or "plugged" while the ports are
     * @param flame what to look for
     * @param gas whether gas burns
     */
    public record Step(
            String to,
            String other,
            String rate,
            String heat,
            String atmosphere,
            String plate,
            String flame,
            boolean gas) {}

    /**
     * The damper plate over one flue.
     *
     * @param holeMm diameter of the flue
     * @param from where the travel is counted from, in words
     */
    public record Plate(String flue, double holeMm, String from, List<Band> bands) {}

    /** A caution in a few words; {@code stop}: never do it. */
    public record Caution(String words, boolean stop) {}

    /** Open travel for one atmosphere, mm from the edge of the hole that opens first: where to set it, and between which it may stand. */
    public record Band(String level, double setMm, double lowMm, double highMm) {}
}
