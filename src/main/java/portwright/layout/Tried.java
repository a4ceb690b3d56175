package portwright.layout;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Which numbers, sizes and parts a search went through, in a sentence. */
final class Tried {
    private Tried() {}

    static String words(Collection<Combination> all, Typed typed) {
        List<Sizes.Choice> holes =
                all.stream().map(Combination::choice).distinct().toList();
        String parts = all.stream()
                .map(c -> c.inlets().inWall() ? "wall" : "floor")
                .distinct()
                .sorted()
                .collect(Collectors.joining(" and "));
        return "Tried: inlets in the " + parts + ", " + numbers(holes, Sizes.Choice::inlets) + " of "
                + sizes(holes, Sizes.Choice::inletMm, typed) + "; flues in the lid, "
                + numbers(holes, Sizes.Choice::flues) + " of " + sizes(holes, Sizes.Choice::flueMm, typed) + "; "
                + Words.count(all.size(), "arrangement", "arrangements").toLowerCase(java.util.Locale.ROOT)
                + " in all.";
    }

    private static String numbers(List<Sizes.Choice> holes, Function<Sizes.Choice, Integer> what) {
        List<Integer> all = holes.stream().map(what).distinct().sorted().toList();
        int last = all.size() - 1;
        String end = String.valueOf(all.get(last));
        return last == 0
                ? end
                : all.subList(0, last).stream().map(String::valueOf).collect(Collectors.joining(", ")) + " or " + end;
    }

    private static String sizes(List<Sizes.Choice> holes, Function<Sizes.Choice, Double> what, Typed typed) {
        List<Double> all = holes.stream().map(what).distinct().sorted().toList();
        String least = typed.words(all.get(0));
        return all.size() == 1
                ? least
                : all.size() + " sizes from " + least + " to " + typed.words(all.get(all.size() - 1));
    }
}
