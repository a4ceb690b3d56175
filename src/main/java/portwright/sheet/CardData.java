package portwright.sheet;

import java.util.List;

/**
 * What stands on the firing card, ready to print.
 *
 * @param title of the design
 * @param fire fuel, burners, jet and pressure in one line
 * @param mark content mark in words
 * @param lightHeading heading over the steps of lighting
 * @param shutHeading heading over the steps of shutting down
 * @param heads headings over {@code temperatureFalls}, {@code flameOut} and {@code alarm}
 * @param runsOver what to do where the kiln runs on past a goal
 * @param plate the damper; null when it is not known, or where no gas can burn
 * @param forecast one line; empty when there is none
 * @param cautions short cautions of the common list that matter at this kiln and are not in the lists above, stops first
 * @param own the design's own cautions that bear on lighting, each with what to do; empty when there is none
 * @param scale in which the record is kept: the one that the steps are written in
 * @param stops findings that forbid lighting
 * @param unproven rules against lighting that were not checked
 * @param notChecked all rules that were not checked, by their names in words
 * @param gas where the gas comes from
 */
public record CardData(
        String title,
        String fire,
        String mark,
        List<Step> steps,
        Plate plate,
        String lightHeading,
        List<String> lighting,
        String shutHeading,
        List<String> shuttingDown,
        List<String> heads,
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
        List<String> notChecked,
        Gas gas) {

    /** Where the gas comes from. */
    public enum Gas {
        CYLINDER,
        /** All of it by pipe: nothing is said of a cylinder. */
        PIPED,
        /** The kiln has no burner: nothing is said of gas at all. */
        NONE
    }

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
     * @param marks one a travel, widest first
     * @param close which fires stand nearer to each other than a hand can set; empty for none
     */
    public record Plate(String flue, double holeMm, boolean inch, List<Mark> marks, String close) {}

    /**
     * A travel on the drawing and the steps that end at it, to the whole millimetre.
     *
     * @param steps numbers as on the card, from 1
     * @param levels fires that those steps ask for, each once; empty where none is asked for
     * @param mm where the line is drawn: travel at the end of the first of them
     * @param lowMm least travel that it may need
     * @param highMm most
     * @param inches those travels in sixteenths of an inch; empty where none are told
     */
    public record Mark(
            List<Integer> steps, List<String> levels, double mm, double lowMm, double highMm, String inches) {}

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

    /**
     * Open travel of one step with gas at its end, mm from the edge of the hole that opens first: where to set it, and between which it may stand.
     *
     * @param step index from 0
     * @param level fire asked for; empty where the design states the opening instead
     */
    public record Band(int step, String level, double setMm, double lowMm, double highMm) {}
}
