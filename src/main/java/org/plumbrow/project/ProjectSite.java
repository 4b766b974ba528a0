package org.plumbrow.project;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Where a project is built: a part of its own version. */
@Entity
class ProjectSite {

    @Id
    private UUID projectId;

    @Version
    private long version;

    private UUID branchId;
    private @Nullable String street;
    private @Nullable String town;
    private @Nullable String state;
    private @Nullable String zip;
    private @Nullable BigDecimal latitudeDeg;
    private @Nullable BigDecimal longitudeDeg;
    private String loads;
    private boolean generator;
    private boolean threePhase;
    private boolean supplySideTap;
    private @Nullable UUID utilityId;
    private @Nullable UUID permitOfficeId;
    private String meterNumbers;

    @SuppressWarnings("NullAway")
    protected ProjectSite() {} // for JPA

    ProjectSite(UUID projectId, UUID branchId, ProjectFacts.Site facts) {
        this.projectId = projectId;
        this.branchId = branchId;
        take(facts);
    }

    /** @return what it was before */
    ProjectFacts.Site correct(ProjectFacts.Site to) {
        ProjectFacts.Site from = facts();
        take(to);
        return from;
    }

    private void take(ProjectFacts.Site facts) {
        street = facts.street();
        town = facts.town();
        state = facts.state();
        zip = facts.zip();
        latitudeDeg = facts.latitudeDeg();
        longitudeDeg = facts.longitudeDeg();
        loads = joined(facts.loads());
        generator = facts.generator();
        threePhase = facts.threePhase();
        supplySideTap = facts.supplySideTap();
        utilityId = facts.utilityId();
        permitOfficeId = facts.permitOfficeId();
        meterNumbers = String.join(",", facts.meterNumbers());
    }

    ProjectFacts.Site facts() {
        return new ProjectFacts.Site(
                street,
                town,
                state,
                zip,
                latitudeDeg,
                longitudeDeg,
                loadsIn(loads),
                generator,
                threePhase,
                supplySideTap,
                utilityId,
                permitOfficeId,
                metersIn(meterNumbers));
    }

    static String joined(Set<SiteLoad> loads) {
        return loads.stream().sorted().map(SiteLoad::name).collect(Collectors.joining(","));
    }

    static Set<SiteLoad> loadsIn(String joined) {
        Set<SiteLoad> loads = EnumSet.noneOf(SiteLoad.class);
        for (String load : joined.split(",")) {
            if (!load.isEmpty()) {
                loads.add(SiteLoad.valueOf(load));
            }
        }
        return Collections.unmodifiableSet(loads);
    }

    static List<String> metersIn(String joined) {
        return Arrays.stream(joined.split(","))
                .map(String::strip)
                .filter(meter -> !meter.isEmpty())
                .toList();
    }

    long version() {
        return version;
    }
}
