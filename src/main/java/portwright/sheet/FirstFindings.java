package portwright.sheet;

import java.util.Comparator;
import java.util.List;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.drawing.Signs;
import portwright.drawing.Words;

/** The findings in short, and the rules that were not checked. */
final class FirstFindings {
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
        // of one severity what bears on drilling comes first
        List<Finding> all = job.result().findings().stream()
                .sorted(Comparator.comparing(Finding::severity)
                        .thenComparing(f -> f.forbids() == Forbids.DRILLING ? 0 : f.bearsOn(Forbids.DRILLING) ? 1 : 2))
                .toList();
        String nots = notChecked();
        double tail = Words.height(block.pen, nots, w, FirstPage.SMALL);
        int shown = 0;
        for (Finding f : all) {
            double h = Words.height(block.pen, f.message(), w - 8, FirstPage.SMALL);
            if (y + h + 1.5 + 5 + Math.min(tail, 30) > limit) {
                break;
            }
            Signs.severity(block.pen, f.severity(), block.at(x + 2.7, y + 2.9), 5);
            y = block.flow(f.message(), x + 8, y, w - 8, FirstPage.SMALL) + 1.5;
            shown++;
        }
        if (all.isEmpty()) {
            y = block.flow("None in what was checked.", x, y, w, FirstPage.SMALL) + 1;
        } else if (shown < all.size()) {
            y = block.flow((all.size() - shown) + " more on the last sheets.", x, y, w, FirstPage.SMALL) + 1;
        }
        List<String> lines = Words.wrap(block.pen, nots, w, FirstPage.SMALL);
        int room = Math.max(0, (int) Math.floor((limit - y) / (FirstPage.SMALL.mm() * Words.LEADING)));
        for (int i = 0; i < Math.min(room, lines.size()); i++) {
            boolean cut = i == room - 1 && lines.size() > room;
            block.words(
                    cut ? "… more on the last sheets." : lines.get(i), x, y + FirstPage.SMALL.mm(), FirstPage.SMALL);
            y += FirstPage.SMALL.mm() * Words.LEADING;
        }
    }

    private String notChecked() {
        List<String> rules = job.result().notChecked().stream()
                .map(n -> n.rule().replace('-', ' '))
                .distinct()
                .toList();
        return rules.isEmpty() ? "Every rule was checked." : "Not checked: " + String.join(", ", rules) + ".";
    }
}
