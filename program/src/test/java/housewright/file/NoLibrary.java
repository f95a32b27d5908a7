package housewright.file;

import housewright.model.Adapter;
import housewright.model.CableType;
import housewright.model.Library;
import housewright.model.Model;
import housewright.model.Practice;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** A library of nothing, for projects that bring their own types. */
final class NoLibrary implements Library {
    @Override
    public int version() {
        return 1;
    }

    @Override
    public Collection<String> modelIds() {
        return List.of();
    }

    @Override
    public Optional<Model> findModel(String id) {
        return Optional.empty();
    }

    @Override
    public Collection<String> cableTypeIds() {
        return List.of();
    }

    @Override
    public Optional<CableType> findCableType(String id) {
        return Optional.empty();
    }

    @Override
    public Collection<String> adapterIds() {
        return List.of();
    }

    @Override
    public Practice practice() {
        return Practice.NONE;
    }

    @Override
    public Optional<Adapter> findAdapter(String id) {
        return Optional.empty();
    }
}
