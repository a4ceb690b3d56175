package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import portwright.data.Cone;
import portwright.data.Cones;
import portwright.model.Design;

/** The example of the file format's description is read as it stands. */
class ContractExampleTest {
    static final Path EXAMPLE = Path.of("src/test/resources/designs/contract-example.json");

    @Test
    void isRead() throws IOException {
        ReadResult r = DesignFile.read(EXAMPLE);
        assertThat(r.problems()).isEmpty();
        Design d = r.design();
        assertThat(d.title()).isEqualTo("Eight-sided club kiln, floor ports");
        assertThat(d.kiln().wall().thickness().mm()).isEqualTo(63.5);
        assertThat(d.kiln().elements().get(0).tails().panel()).isEqualTo(3);
        assertThat(d.kiln().fittings()).hasSize(4);
        assertThat(d.ports().get(2).at().yMm()).isEqualTo(101.6);
        assertThat(d.burners().get(0).flameSafety().closes().si()).isEqualTo(20);
        assertThat(d.firing().steps().get(3).cone()).isEqualTo("10");
        assertThat(d.room().openings()).hasSize(2);
    }

    @Test
    void keepsEveryValueWhenSaved() throws IOException {
        ReadResult r = DesignFile.read(EXAMPLE);
        ReadResult again = DesignText.read(r.document().toText());
        assertThat(again.design()).isEqualTo(r.design());
        assertThat(again.document().toText()).isEqualTo(r.document().toText());
    }

    @Test
    void everyConeOfTheTableIsRead() throws IOException {
        for (Cone cone : Cones.load().all()) {
            ReadResult r = DesignFile.read(EXAMPLE)
                    .document()
                    .setText("firing.steps[3].to", "cone " + cone.name())
                    .read();
            assertThat(r.problems()).isEmpty();
            assertThat(r.design().firing().steps().get(3).cone()).isEqualTo(cone.name());
        }
    }
}
