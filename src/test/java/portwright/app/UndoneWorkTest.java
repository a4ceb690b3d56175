package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.HomeFolder;

/** Work that is undone to what was saved leaves no copy behind. */
class UndoneWorkTest {
    @TempDir
    Path home;

    @Test
    void whatIsUndoneToTheSavedStateIsNoUnsavedWork() throws InterruptedException {
        AtomicReference<OpenWindow> open = new AtomicReference<>();
        Toolkit.run(() -> open.set(OpenWindow.show(home, 1180, 720)));
        OpenWindow w = open.get();
        Toolkit.run(() -> {
            w.doc().markSaved(w.doc().text());
            w.doc().edit("title", t -> t.setText("title", "changed"));
        });
        for (int i = 0; i < 600 && copies() == 0; i++) {
            Thread.sleep(50);
        }
        assertThat(copies()).isEqualTo(1);
        Toolkit.run(() -> {
            w.doc().undo();
            assertThat(w.doc().unsaved()).isFalse();
        });
        assertThat(copies()).isZero();
        Toolkit.run(w::close);
    }

    private long copies() {
        String[] kept = new HomeFolder(home).root().resolve("recovery").toFile().list((d, n) -> n.endsWith(".design"));
        return kept == null ? 0 : kept.length;
    }
}
