package org.plumbrow.schedule.crewweek;

import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.web.Access;
import org.plumbrow.web.link.LinkKind;
import org.plumbrow.web.link.PrivateLink;
import org.plumbrow.web.link.PrivateLinks;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes, shows and ends the private link to a crew's calendar, for those who may see the crew's week. */
@Service
@Transactional
class CrewLinks {

    private final PrivateLinks links;
    private final CrewDoor door;
    private final OwnAddress own;
    private final ChangeLog log;
    private final Access access;

    CrewLinks(PrivateLinks links, CrewDoor door, OwnAddress own, ChangeLog log, Access access) {
        this.links = links;
        this.door = door;
        this.own = own;
        this.log = log;
        this.access = access;
    }

    /** The whole address to put into a calendar; empty without a live link. */
    Optional<String> address(UUID crewId) {
        door.open(crewId);
        return links.live(LinkKind.CREW_FEED, crewId).map(PrivateLink::path).map(own::of);
    }

    /** A new address; the old one ends. */
    void make(UUID crewId) {
        CrewFacts crew = door.open(crewId);
        links.make(LinkKind.CREW_FEED, crew.branchId(), crewId, access.actor());
        log.happened(crew.branchId(), access.actor(), crew.name(), "calendar link", "", "made");
    }

    void end(UUID crewId) {
        CrewFacts crew = door.open(crewId);
        if (links.end(LinkKind.CREW_FEED, crewId)) {
            log.happened(crew.branchId(), access.actor(), crew.name(), "calendar link", "", "ended");
        }
    }
}
