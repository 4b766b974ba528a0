package org.plumbrow.project;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a project has reached, in order. A project that has reached none is new. */
public enum Stage {
    SIGNED("Signed"),
    SURVEYED("Surveyed"),
    DESIGNED("Designed"),
    PERMITTED("Permitted"),
    INSTALLED("Installed"),
    CUTOVER("Utility cutover"),
    COMMISSIONED("Commissioned");

    private final String words;

    Stage(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** "New" for a project without a stage. */
    public static String wordsOf(@Nullable Stage reached) {
        return reached == null ? "New" : reached.words;
    }

    /** The stage behind the next gate; empty when all are passed. */
    public static Optional<Stage> after(@Nullable Stage reached) {
        int next = reached == null ? 0 : reached.ordinal() + 1;
        return next < values().length ? Optional.of(values()[next]) : Optional.empty();
    }

    public boolean isNextAfter(@Nullable Stage reached) {
        return after(reached).filter(this::equals).isPresent();
    }

    /** Whether a project that has reached {@code reached} has this one too. */
    public boolean isReachedAt(@Nullable Stage reached) {
        return reached != null && reached.ordinal() >= ordinal();
    }

    /** 0 for new, 7 for commissioned. */
    static int orderOf(@Nullable Stage reached) {
        return reached == null ? 0 : reached.ordinal() + 1;
    }
}
