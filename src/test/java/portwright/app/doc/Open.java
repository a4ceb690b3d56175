package portwright.app.doc;

import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;

/** Documents for tests, without any toolkit. */
final class Open {
    private Open() {}

    static CheckDesk desk() {
        return new CheckDesk(new RuleBook(LimitTable.load()), Runnable::run);
    }

    static Document starter(String name) {
        DesignText t = Starters.find(name).orElseThrow();
        return new Document(t, t.read().design(), desk());
    }
}
