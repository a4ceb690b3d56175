package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.file.ReadResult;

class RoomFamilyFieldTest {

    @Test
    void anUnknownFamilyIsRefusedWithTheWordsToWrite() {
        ReadResult r = TestDesigns.read(TestDesigns.edit(TestDesigns.studio(), "room.family=\"fr\""));
        assertThat(r.ok()).isFalse();
        assertThat(r.problems()).hasSize(1);
        assertThat(r.problems().get(0).toString()).contains("strictest, us, eu or uk");
        assertThat(TestDesigns.read(TestDesigns.edit(TestDesigns.studio(), "room.family=\"strictest\""))
                        .ok())
                .isTrue();
    }
}
