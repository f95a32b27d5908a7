package housewright.model;

import java.util.Collection;
import java.util.Optional;

/** Types to choose from: the built-in ones, or those of a test. Always the same answer for the same id. */
public interface Library {
    /** Version of the contents; a project names the one it was made with. */
    int version();

    Collection<String> modelIds();

    Optional<Model> findModel(String id);

    Collection<String> cableTypeIds();

    Optional<CableType> findCableType(String id);

    Collection<String> adapterIds();

    Optional<Adapter> findAdapter(String id);

    /** How work is reckoned where a project says nothing else. */
    Practice practice();
}
