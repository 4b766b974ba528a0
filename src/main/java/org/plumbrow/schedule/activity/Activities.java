package org.plumbrow.schedule.activity;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface Activities extends Repository<Activity, UUID> {
    Optional<Activity> findById(UUID id);

    Optional<Activity> findByProjectIdAndKey(UUID projectId, String key);

    void flush();
}
