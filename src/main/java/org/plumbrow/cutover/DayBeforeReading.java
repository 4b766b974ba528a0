package org.plumbrow.cutover;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.outage.ranking.Factor;
import org.plumbrow.calc.outage.ranking.FactorKind;
import org.plumbrow.cutover.ridethrough.LoadAnswers;
import org.plumbrow.cutover.ridethrough.OnSite;
import org.plumbrow.cutover.ridethrough.SiteLoads;
import org.plumbrow.cutover.ridethrough.SiteTimes;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.GateLook;
import org.springframework.stereotype.Component;

/** Reads what the house knows of the day before a project's outage; callers have asked who may. */
@Component
public class DayBeforeReading {

    private final Outages outages;
    private final SiteLoads loads;
    private final ReadyRows said;
    private final WindowHour hour;
    private final BranchSettings settings;
    private final Clock clock;

    DayBeforeReading(
            Outages outages, SiteLoads loads, ReadyRows said, WindowHour hour, BranchSettings settings, Clock clock) {
        this.outages = outages;
        this.loads = loads;
        this.said = said;
        this.hour = hour;
        this.settings = settings;
        this.clock = clock;
    }

    DayBefore of(ProjectFacts project) {
        return window(project).map(window -> of(project, window)).orElse(DayBefore.NOTHING);
    }

    private Optional<OutageFacts> window(ProjectFacts project) {
        return outages.liveOrDone(project.id()).filter(window -> window.state() != OutageState.PROPOSED);
    }

    private DayBefore of(ProjectFacts project, OutageFacts window) {
        OnSite site = loads.ofUnchecked(project.id());
        LocalDate today = LocalDate.ofInstant(
                clock.instant(), settings.facts(project.branchId()).zone());
        return new DayBefore(
                true,
                site.saysWhatSuffers(),
                hour.factors(project, window, site),
                said.items(window.id()),
                LoadAnswers.runIsAhead(site, window.day(), today),
                DayBefore.next(new SiteTimes(site).flockEvents(), window.day().atTime(window.end()))
                        .orElse(null));
    }

    /** The latest minute to reverse, as computed for the hour; empty without an announced outage. */
    public Optional<Factor> reversal(GateLook look) {
        return look.once(DayBefore.class, this::of).of(FactorKind.REVERSAL);
    }
}
