package breach.project;

import java.util.UUID;
import org.springframework.data.repository.Repository;

/** A repository that everybody may use. */
public interface Sites extends Repository<Site, UUID> {}
