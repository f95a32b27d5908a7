package housewright.store.sqlite;

import housewright.app.ProjectStore;
import housewright.app.ProjectStoreContract;
import housewright.app.StoreException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqliteStoreTest extends ProjectStoreContract {
    @TempDir
    Path folder;

    @Override
    protected ProjectStore open() throws StoreException {
        return SqliteStore.open(folder.resolve("halls.db"), START.minusSeconds(1));
    }
}
