package portwright.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.drawing.Signs;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.form.RuleWords;

/** The findings in short, and the rules that were not checked. */
final class FirstFindings {
    private static final TextStyle HEAD = TextStyle.BAR_BOLD;
    /** Rules whose notes forbid nothing and are for who drills. */
    private static final Set<String> DRILLING = Set.of("jacket", "saw-depth", "saw-size", "one-brick", "joint-sliver");

    /** Most lines of one finding. */
    private static final int MOST_LINES = 8;

    private final Job job;
    private final Block block;

    FirstFindings(Job job, Block block) {
        this.job = job;
        this.block = block;
    }

    /** Draws as many as fit between two heights, from the top. */
    void draw(double x, double top, double w, double limit) {
        block.words("Findings", x, top, FirstPage.HEADING);
        double y = top + 2.5;
        List<Finding> all = job.result().findings().stream()
                .sorted(Comparator.comparing(FirstFindings::turn).thenComparing(Finding::severity))
                .toList();
        String nots = notChecked();
        double tail = nots.isEmpty() ? 0 : Words.height(block.pen, nots, w, FirstPage.SMALL);
        int shown = 0;
        boolean firing = false;
        for (Finding f : all) {
            boolean turn = !firing && !drilling(f);
            String told = told(f.message(), w - 8);
            double h = Words.height(block.pen, told, w - 8, FirstPage.SMALL) + (turn ? 6 : 0);
            if (y + h + 1.5 + 5 + Math.min(tail, 30) > limit) {
                break;
            }
            if (turn) {
                y = block.flow(shown == 0 ? "None on drilling. For the firing:" : "For the firing:", x, y, w, HEAD) + 1;
                firing = true;
            }
            Signs.severity(block.pen, f.severity(), block.at(x + 2.7, y + 2.9), 5);
            y = block.flow(told, x + 8, y, w - 8, FirstPage.SMALL) + 1.5;
            shown++;
        }
        if (all.isEmpty()) {
            y = block.flow("None in what was checked.", x, y, w, FirstPage.SMALL) + 1;
        } else if (shown < all.size()) {
            y = block.flow(
                            (all.size() - shown) + " more" + (drilling(all.get(shown)) ? "" : ", for the firing,")
                                    + " on the last sheets.",
                            x,
                            y,
                            w,
                            FirstPage.SMALL)
                    + 1;
        }
        List<String> lines = nots.isEmpty() ? List.of() : Words.wrap(block.pen, nots, w, FirstPage.SMALL);
        int room = Math.max(0, (int) Math.floor((limit - y) / (FirstPage.SMALL.mm() * Words.LEADING)));
        for (int i = 0; i < Math.min(room, lines.size()); i++) {
            boolean cut = i == room - 1 && lines.size() > room;
            block.words(
                    cut ? "… more on the last sheets." : lines.get(i), x, y + FirstPage.SMALL.mm(), FirstPage.SMALL);
            y += FirstPage.SMALL.mm() * Words.LEADING;
        }
    }

    /** Stops and cautions on drilling first, then stops against lighting, then notes on drilling, then what is for the firing. */
    private static int turn(Finding f) {
        if (!drilling(f)) {
            return 3;
        }
        return f.severity() == Severity.NOTE
                ? 2
                : f.severity() == Severity.STOP && f.forbids() == Forbids.LIGHTING ? 1 : 0;
    }

    /** A long message begins here and stands whole on the last sheets. */
    private String told(String message, double w) {
        List<String> lines = Words.wrap(block.pen, message, w, FirstPage.SMALL);
        return lines.size() <= MOST_LINES
                ? message
                : String.join(" ", lines.subList(0, MOST_LINES)).replaceFirst("\\W*\\s\\S+$", " …");
    }

    /** Whether who drills has to know of it: it is a stop of any kind, whose cure may be another place; it bears on drilling, or it is about a hole or the slab and not about the fire. */
    private static boolean drilling(Finding f) {
        return f.severity() == Severity.STOP
                || f.severity() != Severity.NOTE && f.bearsOn(Forbids.DRILLING)
                || f.forbids() == Forbids.DRILLING
                || forTheDrill(f);
    }

    /** Whether it is said to who drills, and to nobody who fires. */
    static boolean forTheDrill(Finding f) {
        return DRILLING.contains(f.rule());
    }

    private String notChecked() {
        List<String> rules = job.result().notChecked().stream()
                .map(n -> RuleWords.within(n.rule()))
                .distinct()
                .toList();
        return rules.isEmpty() ? "" : "Not checked: " + String.join(", ", rules) + ".";
    }
}
