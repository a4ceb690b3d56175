package portwright.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.Starters;
import portwright.review.Review;
import portwright.sheet.Paper;
import portwright.sheet.SheetBook;
import portwright.sheet.SheetOptions;

/** How the writing of a template grows with its sheets: one starter, every part from both sides, on five papers. Check and file are left out. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
public class SheetBenchmark {
    @Param({"900x900mm", "a3", "tabloid", "letter", "a4"})
    public String paper;

    private Review review;
    private CheckResult checked;
    private SheetOptions options;
    private int sheets;

    @Setup
    public void check() {
        review = Review.of(Starters.find("octagon-17").orElseThrow().read().design());
        checked = new RuleBook(LimitTable.load()).check(review);
        options = new SheetOptions(
                Paper.parse(paper), SheetOptions.Part.ALL, SheetOptions.Side.BOTH, 1, 1, false);
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public SheetBook.Print template() {
        SheetBook.Print print = SheetBook.print(checked, review.geometry(), "octagon-17.json", options);
        sheets = print.sheets();
        return print;
    }

    /** The figure of a slope by sheets. */
    @TearDown
    public void say() {
        System.out.println(paper + ": " + sheets + " sheets");
    }
}
