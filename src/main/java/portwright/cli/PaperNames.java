package portwright.cli;

import java.util.Iterator;
import portwright.sheet.Paper;

/** The named sizes of paper, as help lists them. */
final class PaperNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
        return Paper.named().stream().map(Paper::name).iterator();
    }
}
