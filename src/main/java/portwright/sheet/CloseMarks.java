package portwright.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import portwright.review.ClosePlates;
import portwright.review.PlateSetting;
import portwright.units.Celsius;

/** The fires of a card whose travels lie nearer to each other than a hand can set the plate. */
final class CloseMarks {
    private CloseMarks() {}

    /**
     * One sentence for all pairs of fires; empty for none.
     *
     * @param close pairs that are too close at one temperature
     * @param bands travels at the ends of the steps: pairs that come to the same whole millimetre are told too
     */
    static String words(List<ClosePlates> close, List<CardData.Band> bands) {
        List<String> out = new ArrayList<>();
        Set<Set<String>> said = new HashSet<>();
        for (ClosePlates p : close) {
            said.add(Set.of(p.first().level(), p.second().level()));
            out.add(pair(
                            p.first().level(),
                            p.first().step(),
                            p.second().level(),
                            p.second().step())
                    + (Double.isNaN(p.apartMm())
                            ? ", both " + p.first().words() + " mm"
                            : String.format(
                                    Locale.ROOT,
                                    ", %.1f mm apart at %.0f °C",
                                    p.apartMm(),
                                    p.kelvin() - Celsius.ZERO_C)));
        }
        for (int i = 0; i < bands.size(); i++) {
            for (CardData.Band b : bands.subList(i + 1, bands.size())) {
                CardData.Band a = bands.get(i);
                String mm = PlateSetting.whole(a.setMm());
                if (!a.level().isEmpty()
                        && !b.level().isEmpty()
                        && !a.level().equals(b.level())
                        && mm.equals(PlateSetting.whole(b.setMm()))
                        && said.add(Set.of(a.level(), b.level()))) {
                    out.add(pair(a.level(), a.step(), b.level(), b.step()) + ", both " + mm + " mm");
                }
            }
        }
        return out.isEmpty()
                ? ""
                : "Too close to set by hand: " + String.join("; ", out) + ". Only flame and meter tell them apart.";
    }

    private static String pair(String a, int stepA, String b, int stepB) {
        return a + " (" + (stepA + 1) + ") and " + b + " (" + (stepB + 1) + ")";
    }
}
