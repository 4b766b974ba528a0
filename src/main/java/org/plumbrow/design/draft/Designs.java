package org.plumbrow.design.draft;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DrawnQuantities;
import org.plumbrow.design.TitleBlock;
import org.plumbrow.design.draft.DesignRows.Kept;
import org.plumbrow.design.draft.DesignRows.Request;
import org.plumbrow.design.equipment.Catalogue;
import org.plumbrow.design.equipment.Entry;
import org.plumbrow.design.equipment.EquipmentKind;
import org.plumbrow.design.part.DesignParts;
import org.plumbrow.design.part.Part;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads designs: the draft as it stands, and revisions as they were frozen. */
@Service
@Transactional(readOnly = true)
public class Designs {

    private static final CodeEdition USUAL_EDITION = CodeEdition.NEC_2020;

    private final DesignRows rows;
    private final RevisionRows revisions;
    private final Projects projects;
    private final ProjectAccess access;
    private final BranchSettings settings;
    private final Catalogue catalogue;
    private final Clock clock;

    Designs(
            DesignRows rows,
            RevisionRows revisions,
            Projects projects,
            ProjectAccess access,
            BranchSettings settings,
            Catalogue catalogue,
            Clock clock) {
        this.rows = rows;
        this.revisions = revisions;
        this.projects = projects;
        this.access = access;
        this.settings = settings;
        this.catalogue = catalogue;
        this.clock = clock;
    }

    /**
     * A draft with all that belongs to it.
     *
     * @param request null while nobody has asked for a design
     * @param kept by part; a part that nobody has written is missing
     */
    public record Draft(
            ProjectFacts project,
            @Nullable Request request,
            Map<Part, Kept> kept,
            Map<EquipmentKind, Map<String, Entry>> equipment,
            DesignFacts facts) {

        Kept kept(Part part) {
            return kept.getOrDefault(part, Kept.NOTHING);
        }

        DesignParts parts() {
            return DesignRows.parts(kept);
        }

        public boolean isBegun() {
            return request != null;
        }
    }

    /** The draft as the person who asks may see it. @throws org.plumbrow.web.NotFound @throws org.plumbrow.web.NotForYourRole */
    public Draft draft(UUID projectId) {
        access.require(projectId, May.SEE_DESIGN);
        return draft(projects.facts(projectId));
    }

    /** For rules and background work, by facts that were read already. */
    public Draft draft(ProjectFacts project) {
        Map<Part, Kept> kept = rows.parts(project.id());
        var equipment = catalogue.all(project.branchId());
        return new Draft(
                project,
                rows.request(project.id()).orElse(null),
                kept,
                equipment,
                assembled(project, DesignRows.parts(kept), equipment, version(kept)));
    }

    private static long version(Map<Part, Kept> kept) {
        return kept.values().stream().mapToLong(one -> one.version() + 1).sum();
    }

    /** The facts of parts that are perhaps not kept yet: for a try. */
    DesignFacts facts(ProjectFacts project, DesignParts parts) {
        return assembled(project, parts, catalogue.all(project.branchId()), 0);
    }

    private DesignFacts assembled(
            ProjectFacts project, DesignParts parts, Map<EquipmentKind, Map<String, Entry>> equipment, long version) {
        var assembly = new DesignAssembly(
                parts,
                types(equipment, EquipmentKind.MODULE, Entry::module),
                types(equipment, EquipmentKind.INVERTER, Entry::inverter));
        Optional<UtilityFacts> utility =
                Optional.ofNullable(project.site().utilityId()).flatMap(settings::utility);
        return assembly.facts(new DesignAssembly.Head(
                project.id(),
                project.branchId(),
                version,
                null,
                sheet(project, parts, utility),
                edition(project),
                utility.map(UtilityFacts::disconnectMostFt).orElse(null)));
    }

    private static <T> Map<String, T> types(
            Map<EquipmentKind, Map<String, Entry>> equipment, EquipmentKind kind, Function<Entry, T> type) {
        Map<String, T> types = new LinkedHashMap<>();
        equipment.getOrDefault(kind, Map.of()).forEach((name, entry) -> types.put(name, type.apply(entry)));
        return types;
    }

    private TitleBlock sheet(ProjectFacts project, DesignParts parts, Optional<UtilityFacts> utility) {
        return new TitleBlock(
                project.number(),
                project.name(),
                project.site().address(),
                utility.map(UtilityFacts::name).orElse(""),
                project.inCharge(Duty.DESIGNER).map(ProjectFacts.InCharge::name).orElse(null),
                parts.one(Part.SITE).orNull("checkedBy"),
                LocalDate.ofInstant(
                        clock.instant(), settings.facts(project.branchId()).zone()));
    }

    private CodeEdition edition(ProjectFacts project) {
        return Optional.ofNullable(project.site().permitOfficeId())
                .flatMap(settings::permitOffice)
                .map(PermitOfficeFacts::codeEdition)
                .orElse(USUAL_EDITION);
    }

    /** The draft's facts; empty while nobody has begun a design. */
    public Optional<DesignFacts> facts(UUID projectId) {
        Draft draft = draft(projectId);
        return draft.isBegun() ? Optional.of(draft.facts()) : Optional.empty();
    }

    /** A revision as it left the house. */
    public Optional<DesignFacts> frozen(UUID projectId, String letter) {
        access.require(projectId, May.SEE_DESIGN);
        return revisions.find(projectId, letter).map(Revision::facts);
    }

    /** What the newest frozen revision of each project has to build, for background work: one query. */
    public Map<UUID, DrawnQuantities> quantitiesUnchecked(Collection<UUID> projectIds) {
        List<UUID> asked = List.copyOf(projectIds);
        return ReadOnce.of(new QuantitiesOf(asked), () -> revisions.quantities(asked));
    }

    private record QuantitiesOf(List<UUID> projectIds) {}

    public Optional<DesignFacts> newestFrozenUnchecked(UUID projectId) {
        return revisions.newest(projectId).map(Revision::facts);
    }
}
