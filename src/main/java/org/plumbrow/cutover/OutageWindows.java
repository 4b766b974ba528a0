package org.plumbrow.cutover;

import jakarta.persistence.LockModeType;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface OutageWindows extends Repository<OutageWindow, UUID> {

    OutageWindow save(OutageWindow window);

    OutageWindow saveAndFlush(OutageWindow window);

    Optional<OutageWindow> findById(UUID id);

    List<OutageWindow> findByIdIn(Collection<UUID> ids);

    @Query("select w from OutageWindow w where w.projectId = ?1 and w.state in (PROPOSED, BOOKED, NOTICE_GIVEN)")
    Optional<OutageWindow> live(UUID projectId);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select w from OutageWindow w where w.id = ?1")
    Optional<OutageWindow> locked(UUID id);

    /** Newest first. */
    @Query("select w from OutageWindow w where w.projectId = ?1 order by w.madeAt desc, w.id desc")
    List<OutageWindow> ofProject(UUID projectId);

    @Query(
            "select w from OutageWindow w where w.day between ?1 and ?2 and w.state in (BOOKED, NOTICE_GIVEN) order by w.day")
    List<OutageWindow> announced(LocalDate first, LocalDate last);

    @Query("select w from OutageWindow w where w.projectId in ?1 and w.state in (PROPOSED, BOOKED, NOTICE_GIVEN)")
    List<OutageWindow> liveOf(Collection<UUID> projectIds);
}
