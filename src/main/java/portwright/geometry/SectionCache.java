package portwright.geometry;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import portwright.model.On;

/** Keeps the weakest sections of one kiln once they have been asked for. */
final class SectionCache {
    private final KilnGeometry kiln;
    private final Map<On, Optional<WeakestSection.Line>> known = new EnumMap<>(On.class);

    SectionCache(KilnGeometry kiln) {
        this.kiln = kiln;
    }

    synchronized WeakestSection.Line of(On on) {
        return known.computeIfAbsent(on, o -> Optional.ofNullable(WeakestSection.of(kiln, o)))
                .orElse(null);
    }
}
