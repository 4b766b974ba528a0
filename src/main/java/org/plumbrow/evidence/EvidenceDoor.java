package org.plumbrow.evidence;

import java.util.UUID;

/** Whether the person who asks may open the evidence of a project; supplied by the room that knows projects. */
public interface EvidenceDoor {

    /**
     * @throws org.plumbrow.web.NotFound if the project is not there for them
     * @throws org.plumbrow.web.NotForYourRole if it is not for their role
     */
    void require(UUID projectId);
}
