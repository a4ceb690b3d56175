package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.review.Review;

/** The line of the card that tells the fire. */
class CardFireTest {
    private static String fire(String pressure) {
        DesignText d = Starters.find("octagon-17").orElseThrow().setText("burners[0].pressure", pressure);
        Review review = Review.of(d.read().design());
        return CardBuilder.of(new RuleBook(LimitTable.load()).check(review), review.design(), CardForecast.of(review))
                .fire();
    }

    /** 1 inH2O is 249.089 Pa by definition, so 11 inH2O are 27.4 mbar. */
    @Test
    void thePressureStandsOnceInMillibar() {
        assertThat(fire("28 mbar")).contains("28 mbar").doesNotContain("(");
        assertThat(fire("11 inH2O")).contains("11 inH2O (27.4 mbar)");
    }
}
