package breach.project;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.util.UUID;

/** An entity that everybody may reach and change. */
@Entity
public class Site {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";

    public void setName(String name) {
        this.name = name;
    }

    String name() {
        return name + id;
    }
}
