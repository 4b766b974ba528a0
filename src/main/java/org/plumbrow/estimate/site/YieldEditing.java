package org.plumbrow.estimate.site;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Entered;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes how a project's yield is computed, and computes it anew. */
@Service
@Transactional
public class YieldEditing {

    private final YieldRows rows;
    private final YieldBook book;
    private final WeatherRows weather;
    private final ProjectAccess projectAccess;
    private final Journal journal;
    private final Gates gates;
    private final Access access;
    private final Clock clock;

    YieldEditing(
            YieldRows rows,
            YieldBook book,
            WeatherRows weather,
            ProjectAccess projectAccess,
            Journal journal,
            Gates gates,
            Access access,
            Clock clock) {
        this.rows = rows;
        this.book = book;
        this.weather = weather;
        this.projectAccess = projectAccess;
        this.journal = journal;
        this.gates = gates;
        this.access = access;
        this.clock = clock;
    }

    /**
     * @param version as it was opened; -1 for a project whose terms nobody has changed
     * @param weatherId null for the nearest
     * @throws EditedMeanwhile if somebody was faster
     */
    public Optional<Refusal> change(UUID projectId, long version, @Nullable UUID weatherId, YieldTerms terms) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        if (weatherId != null && !isOf(branchId, weatherId)) {
            return Optional.of(new Refusal("weatherId", "Choose one of the list."));
        }
        YieldRows.Kept before = rows.terms(projectId);
        if (before.version() != version) {
            throw new EditedMeanwhile(version, before.version());
        }
        if (before.terms().equals(terms) && Objects.equals(before.weatherId(), weatherId)) {
            return Optional.empty();
        }
        if (!rows.keep(projectId, branchId, version, weatherId, terms)) {
            throw new EditedMeanwhile(version, rows.terms(projectId).version());
        }
        String sentence = sentence(before, weatherId, terms);
        var event = JournalEvent.of(projectId, "estimate.changed", sentence, facts(before, terms));
        journal.append(event, access.actor(), clock.instant());
        book.refresh(projectId);
        gates.lookAgain(projectId);
        return Optional.empty();
    }

    /** Computes the yield and keeps it, as opening its page does. */
    public void compute(UUID projectId) {
        projectAccess.require(projectId, May.SEE_ESTIMATE);
        book.refresh(projectId);
    }

    private boolean isOf(UUID branchId, UUID weatherId) {
        return weather.find(weatherId)
                .filter(card -> card.branchId().equals(branchId))
                .isPresent();
    }

    private String sentence(YieldRows.Kept before, @Nullable UUID weatherId, YieldTerms terms) {
        List<String> changed = new ArrayList<>();
        if (!Objects.equals(before.weatherId(), weatherId)) {
            changed.add("weather "
                    + (weatherId == null
                            ? "the nearest"
                            : weather.find(weatherId).map(WeatherCard::name).orElse("")));
        }
        if (!before.terms().losses().equals(terms.losses())) {
            changed.add("losses %.1f %% together".formatted(terms.calcLosses().totalPercent()));
        }
        if (!before.terms().snowPercent().equals(terms.snowPercent())) {
            changed.add("snow months");
        }
        if (!before.terms().rows().equals(terms.rows())) {
            changed.add("rows");
        }
        if (before.terms().useHorizon() != terms.useHorizon()) {
            changed.add(terms.useHorizon() ? "horizon applied" : "horizon left out");
        }
        return changed.isEmpty()
                ? "Terms of the yield changed."
                : "Terms of the yield changed: " + String.join(", ", changed) + ".";
    }

    private static Map<String, String> facts(YieldRows.Kept before, YieldTerms terms) {
        Map<String, String> facts = new TreeMap<>();
        facts.put("losses.from", "%.2f".formatted(before.terms().calcLosses().totalPercent()));
        facts.put("losses.to", "%.2f".formatted(terms.calcLosses().totalPercent()));
        facts.put("spread.from", Entered.written(before.terms().yearPercent()));
        facts.put("spread.to", Entered.written(terms.yearPercent()));
        return facts;
    }
}
