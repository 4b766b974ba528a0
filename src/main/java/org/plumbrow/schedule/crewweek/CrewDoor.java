package org.plumbrow.schedule.crewweek;

import java.util.Set;
import java.util.UUID;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Role;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** May the person who asks see this crew's week? Managers and project managers all, a crew lead the own crews' only. */
@Component
class CrewDoor {

    private final Crews crews;
    private final Access access;

    CrewDoor(Crews crews, Access access) {
        this.crews = crews;
        this.access = access;
    }

    /** @throws NotFound if it is another branch's @throws NotForYourRole if it is another lead's */
    @Transactional(readOnly = true)
    CrewFacts open(UUID crewId) {
        CrewFacts crew = crews.crew(crewId).orElseThrow(NotFound::new);
        access.require(crew.branchId(), May.SEE_CREWS);
        BranchCard branch = access.visitor().branch(crew.branchId()).orElseThrow(NotFound::new);
        boolean onlyLeads = branch.roles().equals(Set.of(Role.CREW_LEAD));
        if (onlyLeads
                && crew.leadPersonId()
                        .filter(access.visitor().personId()::equals)
                        .isEmpty()) {
            throw new NotForYourRole("Branch managers, project managers and this crew's own lead");
        }
        return crew;
    }
}
