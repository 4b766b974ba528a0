package org.plumbrow.survey;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Option;

/** What covers a plane of a roof; the names are stored. */
public enum RoofCovering {
    ASPHALT("Asphalt shingles"),
    METAL_RIB("Ribbed metal"),
    METAL_SEAM("Standing-seam metal"),
    TILE("Tiles"),
    MEMBRANE("Membrane"),
    SHEET_OLD("Old fibre-cement sheets"),
    OTHER("Other");

    private final String words;

    RoofCovering(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    static Option[] options() {
        return Arrays.stream(values())
                .map(covering -> new Option(covering.name(), covering.words))
                .toArray(Option[]::new);
    }

    static Optional<RoofCovering> of(@Nullable String stored) {
        return Arrays.stream(values())
                .filter(covering -> covering.name().equals(stored))
                .findFirst();
    }
}
