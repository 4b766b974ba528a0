package org.plumbrow.design;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What the title block says. */
public record TitleBlock(
        String projectNumber,
        String projectName,
        String address,
        String utility,
        @Nullable String drawnBy,
        @Nullable String checkedBy,
        LocalDate date) {}
