package org.plumbrow.status.desk;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.status.CustomerSharing;
import org.plumbrow.status.CustomerTerms;

/** The forms of the branch's pages about the customer. */
final class DeskForms {

    private DeskForms() {}

    /** @param shutOffPhoto id of a photo, empty for none */
    record WordsForm(
            @Nullable String shutOffPlace,
            @Nullable String shutOffPhoto,
            @Nullable String message,
            @Nullable Long version) {

        static WordsForm of(CustomerSharing.Written now) {
            UUID photo = now.terms().shutOffPhotoId();
            return new WordsForm(
                    now.terms().shutOffPlace(),
                    photo == null ? "" : photo.toString(),
                    now.terms().message(),
                    now.version());
        }

        /** Empty when the photo is named by something that is no id. */
        Optional<CustomerTerms> terms() {
            String photo = text(shutOffPhoto).strip();
            try {
                UUID id = photo.isEmpty() ? null : UUID.fromString(photo);
                return Optional.of(new CustomerTerms(text(shutOffPlace), id, text(message)));
            } catch (IllegalArgumentException noId) {
                return Optional.empty();
            }
        }

        List<Written> written() {
            return List.of(
                    Written.of("Where the shut-off is", "shutOffPlace", text(shutOffPlace)),
                    Written.of(
                            "Photo of the shut-off",
                            "shutOffPhoto",
                            text(shutOffPhoto),
                            text(shutOffPhoto).isEmpty() ? "none" : "a photo"),
                    Written.of("A word to the customer", "message", text(message)));
        }
    }

    record PhoneForm(@Nullable String phone, @Nullable Long version) {

        List<Written> written() {
            return List.of(Written.of("Phone", "phone", text(phone)));
        }
    }

    record PaperForm(@Nullable String title) {}

    static String text(@Nullable String typed) {
        return typed == null ? "" : typed;
    }

    /** One that no thing has where the form carried none. */
    static long version(@Nullable Long carried) {
        return carried == null ? -1 : carried;
    }
}
