package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which of several logs count, and in what order.
 *
 * @param counted numbers of the logs that count, from 0, oldest first
 * @param repeats for each log the number of the earlier one that it repeats row by row; −1 for none
 * @param byDate whether every log has a date and the order is theirs; else it is the order given
 * @param against whether logs with dates stand against their dates in an order that is kept because others have none
 * @param overlap numbers of logs that cover a time that the one counted before them covers too: one kiln cannot fire twice at once
 * @param startS first row of each log, s since 1970; NaN without a date
 */
public record LogOrder(
        List<Integer> counted,
        List<Integer> repeats,
        boolean byDate,
        boolean against,
        List<Integer> overlap,
        List<Double> startS) {
    /** The order of logs. */
    public static LogOrder of(List<FiringLog> logs) {
        List<Integer> counted = new ArrayList<>();
        List<Integer> repeats = new ArrayList<>();
        for (int i = 0; i < logs.size(); i++) {
            int same = -1;
            for (int k = 0; k < i && same < 0; k++) {
                same = logs.get(k).sameRows(logs.get(i)) ? k : -1;
            }
            repeats.add(same);
            if (same < 0) {
                counted.add(i);
            }
        }
        List<Double> start = logs.stream().map(FiringLog::startS).toList();
        boolean byDate = counted.stream().noneMatch(i -> start.get(i).isNaN());
        boolean against = false;
        if (byDate) {
            counted.sort(Comparator.comparingDouble(start::get));
        } else {
            double before = Double.NEGATIVE_INFINITY;
            for (int i : counted) {
                against |= start.get(i) < before;
                before = start.get(i).isNaN() ? before : Math.max(before, start.get(i));
            }
        }
        List<Integer> overlap = new ArrayList<>();
        for (int k = 1; k < counted.size(); k++) {
            FiringLog a = logs.get(counted.get(k - 1));
            if (start.get(counted.get(k)) < a.startS() + a.lengthS() && !against) {
                overlap.add(counted.get(k));
            }
        }
        return new LogOrder(counted, repeats, byDate, against, overlap, start);
    }

    /** Number of the newest log. */
    public int newest() {
        return counted.get(counted.size() - 1);
    }
}
