package portwright.calc.room;

import java.util.ArrayList;
import java.util.List;

/**
 * Carbon monoxide in the room over a firing and after it. Each stretch of constant release is solved exactly (see
 * {@link Dilution}); averages are exact integrals of these curves.
 *
 * @param series level over time, for a chart
 * @param peakPpm highest level
 * @param peakS when
 * @param average15MinPpm highest average over any 15 min
 * @param average8hPpm highest average over any 8 h, the time after the firing included
 * @param releasedM3 CO released into the room
 */
public record RoomCo(
        List<Sample> series,
        double peakPpm,
        double peakS,
        double average15MinPpm,
        double average8hPpm,
        double releasedM3) {

    private static final double SAMPLE_S = 60;
    private static final double QUARTER_HOUR_S = 900;
    private static final double EIGHT_HOURS_S = 28_800;

    public RoomCo {
        series = List.copyOf(series);
    }

    /** Level at one moment. */
    public record Sample(double timeS, double ppm) {}

    /**
     * A stretch of the firing.
     *
     * @param seconds its length
     * @param coMolPerS CO made
     */
    public record Segment(double seconds, double coMolPerS) {
        public Segment {
            Check.atLeastZero(seconds, "the length of a stretch");
            Check.atLeastZero(coMolPerS, "the CO made");
        }
    }

    /**
     * Share of the CO made that stays in the room: {@code 1 - min(1, led outdoors + burnt at the flue of the rest)}.
     *
     * @param ledOutdoors share that a hood or pipe takes outdoors, 0 to 1
     * @param burntAtFlue share of the rest that burns at the flue, 0 to 1; CO from leaks never does
     */
    public static double shareInRoom(double ledOutdoors, double burntAtFlue) {
        return (1 - Check.share(ledOutdoors, "the share led outdoors"))
                * (1 - Check.share(burntAtFlue, "the share burnt at the flue"));
    }

    /**
     * Follows the room from clean air through the firing and on for the longer of 8 h or the firing's own length.
     *
     * @param firing stretches in order
     * @param shareInRoom part of the CO made that enters the room, see {@link #shareInRoom}
     * @param flowM3PerS fresh air
     * @param mixing K, at least 1; divides the flow, never the volume
     * @param volumeM3 room
     */
    public static RoomCo of(
            List<Segment> firing, double shareInRoom, double flowM3PerS, double mixing, double volumeM3) {
        Check.share(shareInRoom, "the share in the room");
        Check.atLeastZero(flowM3PerS, "the fresh air");
        Check.aboveZero(volumeM3, "the volume");
        double effective = flowM3PerS / Math.max(1, mixing);
        double length = firing.stream().mapToDouble(Segment::seconds).sum();
        List<Segment> all = new ArrayList<>(firing);
        all.add(new Segment(Math.max(EIGHT_HOURS_S, length), 0));
        List<double[]> nodes = new ArrayList<>(); // time, level, exposure so far, release up to there
        nodes.add(new double[] {0, 0, 0, 0});
        double released = 0;
        for (Segment s : all) {
            double g = s.coMolPerS * Dilution.MOLAR_VOLUME_20C * shareInRoom;
            released += g * s.seconds;
            int parts = (int) Math.max(1, Math.ceil(s.seconds / SAMPLE_S));
            double dt = s.seconds / parts;
            for (int i = 0; i < parts && dt > 0; i++) {
                double[] last = nodes.get(nodes.size() - 1);
                nodes.add(new double[] {
                    last[0] + dt,
                    Dilution.levelAfter(last[1], g, effective, volumeM3, dt),
                    last[2] + Dilution.exposure(last[1], g, effective, volumeM3, dt),
                    g
                });
            }
        }
        List<Sample> series =
                nodes.stream().map(n -> new Sample(n[0], n[1] * 1e6)).toList();
        Sample peak = series.stream().reduce((a, b) -> b.ppm > a.ppm ? b : a).orElseThrow();
        return new RoomCo(
                series,
                peak.ppm,
                peak.timeS,
                highestAverage(nodes, QUARTER_HOUR_S, effective, volumeM3),
                highestAverage(nodes, EIGHT_HOURS_S, effective, volumeM3),
                released);
    }

    /** Seconds at which a level is first reached, or positive infinity. */
    public double firstOverS(double ppm) {
        return series.stream()
                .filter(s -> s.ppm > ppm)
                .mapToDouble(Sample::timeS)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double highestAverage(List<double[]> nodes, double windowS, double flowM3PerS, double volumeM3) {
        double best = 0;
        int from = 0;
        for (int to = 0; to < nodes.size(); to++) {
            double start = nodes.get(to)[0] - windowS;
            while (from + 1 < to && nodes.get(from + 1)[0] <= start) {
                from++;
            }
            double begin = 0;
            if (start > 0) {
                double[] a = nodes.get(from);
                double release = nodes.get(from + 1)[3];
                begin = a[2] + Dilution.exposure(a[1], release, flowM3PerS, volumeM3, start - a[0]);
            }
            best = Math.max(best, (nodes.get(to)[2] - begin) / windowS * 1e6);
        }
        return best;
    }
}
