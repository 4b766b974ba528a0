package org.plumbrow.evidence;

import java.util.Base64;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A signature: the name, for what trade or part, and the words that are signed. Drawn on the page, or the typed name.
 *
 * @param drawing data address of a PNG as the page's canvas gives it; null or empty for a typed signature
 */
public record NewSignature(
        String name, String trade, String text, @Nullable String drawing) {

    private static final String PNG = "data:image/png;base64,";
    private static final int MOST_LETTERS = 400_000;

    /** The drawn picture's bytes; empty without one. @throws IllegalArgumentException if it is not such a picture */
    Optional<byte[]> picture() {
        if (drawing == null || drawing.isBlank()) {
            return Optional.empty();
        }
        if (!drawing.startsWith(PNG) || drawing.length() > MOST_LETTERS) {
            throw new IllegalArgumentException("not a drawn signature");
        }
        return Optional.of(Base64.getDecoder().decode(drawing.substring(PNG.length())));
    }
}
