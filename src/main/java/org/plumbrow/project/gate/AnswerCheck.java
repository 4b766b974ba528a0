package org.plumbrow.project.gate;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceKind;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/** What cannot be an answer: refused in words, each at its field of the form. A reading outside its limits can. */
@Component
class AnswerCheck {

    private static final BigDecimal LARGEST = new BigDecimal("1000000000");
    private static final LocalDate EARLIEST = LocalDate.of(1990, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(2100, 1, 1);
    private static final int MOST_LETTERS = 500;

    private final EvidenceStore evidence;

    AnswerCheck(EvidenceStore evidence) {
        this.evidence = evidence;
    }

    /** The papers that these answers name, in one query. */
    Map<UUID, EvidenceFacts> papersOf(Collection<ItemAnswer> answers) {
        List<UUID> ids = answers.stream()
                .flatMap(answer -> answer.parts().stream())
                .filter(Given.Kept.class::isInstance)
                .map(given -> ((Given.Kept) given).evidenceId())
                .distinct()
                .toList();
        Map<UUID, EvidenceFacts> papers = new HashMap<>();
        evidence.of(ids).forEach(paper -> papers.put(paper.id(), paper));
        return papers;
    }

    Optional<Refusal> refusal(UUID projectId, AskedItem item, List<Given> parts, Map<UUID, EvidenceFacts> papers) {
        if (parts.isEmpty()) {
            return Optional.of(Refusal.ofForm("Nothing was given yet. Give at least one of what is asked for here."));
        }
        return parts.stream()
                .map(given -> refusal(projectId, item, given, papers))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Refusal> refusal(
            UUID projectId, AskedItem item, Given given, Map<UUID, EvidenceFacts> papers) {
        if (!Judging.givenKinds(item, true).contains(given.kind())) {
            return no(
                    "",
                    "“" + item.words() + "” does not ask for a " + given.kind().words() + ".");
        }
        if (given instanceof Given.Read read) {
            return ofReading(item, read);
        }
        if (given instanceof Given.OnDate on) {
            boolean possible = !on.date().isBefore(EARLIEST) && on.date().isBefore(LATEST);
            return possible ? Optional.empty() : no("date", "Choose a day between 1990 and 2099.");
        }
        if (given instanceof Given.Kept kept) {
            return ofPaper(projectId, kept, papers.get(kept.evidenceId()));
        }
        return tooLong("note", ((Given.Confirmed) given).note());
    }

    private static Optional<Refusal> ofReading(AskedItem item, Given.Read read) {
        BigDecimal value = read.value();
        if (item.readsFigures() && value == null) {
            return no("reading", "Write the reading as a number in " + item.unit() + ".");
        }
        if (!item.readsFigures() && read.text().isBlank()) {
            return no("reading", "Write what was read.");
        }
        if (value != null && value.abs().compareTo(LARGEST) > 0) {
            return no("reading", "Write a number below 1,000,000,000.");
        }
        return tooLong("reading", read.text())
                .or(() -> tooLong("label", read.label()))
                .or(() -> tooLong("explanation", read.explanation()));
    }

    private static Optional<Refusal> ofPaper(UUID projectId, Given.Kept kept, @Nullable EvidenceFacts paper) {
        if (paper == null || paper.hidden() || !projectId.equals(paper.projectId())) {
            return no(field(kept.kind()), "This paper is not among the project’s papers. Bring it again.");
        }
        boolean fits = switch (kept.kind()) {
            case PHOTO -> paper.kind() == EvidenceKind.PHOTO;
            case SIGNATURE -> paper.kind() == EvidenceKind.SIGNATURE;
            default -> paper.kind() != EvidenceKind.SIGNATURE;
        };
        return fits
                ? Optional.empty()
                : no(
                        field(kept.kind()),
                        "A " + kept.kind().words() + " is asked for; this is a "
                                + paper.kind().words() + ".");
    }

    private static String field(AnswerKind kind) {
        return kind.words();
    }

    private static Optional<Refusal> tooLong(String field, String text) {
        return text.length() <= MOST_LETTERS ? Optional.empty() : no(field, "Write at most 500 letters.");
    }

    private static Optional<Refusal> no(String field, String sentence) {
        return Optional.of(new Refusal(field, sentence));
    }
}
