package org.plumbrow.status;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a project's customer is told beside the dates.
 *
 * @param shutOffPlace where the emergency shut-off is, in words for the customer; may be empty
 * @param shutOffPhotoId a photo of it
 * @param message a few words of ours; may be empty
 */
public record CustomerTerms(String shutOffPlace, @Nullable UUID shutOffPhotoId, String message) {

    public static final int PLACE_MOST = 300;
    public static final int MESSAGE_MOST = 500;
    static final CustomerTerms NOTHING = new CustomerTerms("", null, "");

    public CustomerTerms {
        shutOffPlace = shutOffPlace.strip();
        message = message.strip();
    }
}
